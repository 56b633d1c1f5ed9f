"""Six unlike phones in a hall without internet: the host dies in the middle, every one ends in received."""

import json
import shutil
import signal
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from builder.model.code import version_of
from builder.model.handed import sheet_of
from tests.demo.small import small_course
from tests.doors.serve.asking import Place
from tests.host.made import codes
from tests.host.phone import KINDS, Phone, bring
from tests.host.running import free_port, own_address, running
from tests.host.test_run import come_in
from tests.render.sample_site import built

pytestmark = pytest.mark.browser
MOST_BYTES = 60_000


@pytest.fixture(scope="module")
def course(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A course whose class has nothing yet, built."""
    folder = small_course(tmp_path_factory.mktemp("hall") / "course")
    shutil.rmtree(folder / "classes" / "spring" / "answers")
    shutil.copytree(built(), folder / "out" / "publish")
    return folder


@pytest.fixture
def phones(browser: Browser) -> Iterator[list[Phone]]:
    """Six phones; at the end none of their pages has failed."""
    found = [bring(browser, kind) for kind in KINDS]
    yield found
    for one in found:
        one.context.close()
    assert [error for one in found for error in one.errors] == []


def test_the_host_dies_in_the_middle_and_nothing_is_lost(
    course: Path, tmp_path: Path, phones: list[Phone]
) -> None:
    """Two are done before, four hand in while nothing answers; all are received, each sheet as it was."""
    ports = ("--port", str(free_port()), "--hall", own_address())
    inbox = course / "classes" / "spring" / "answers"
    with running(course, course / "out", tmp_path, *ports) as host:
        for phone, code in zip(phones, codes(), strict=False):
            phone.join(host.ways["hall"], code)
            phone.choose(0, 1)
        all_hand_in(phones[:2], "received")
        host.end(signal.SIGKILL)
    early = [phone.receipt() for phone in phones[:2]]
    for phone in phones[2:]:
        phone.choose(1, 0)
    all_hand_in(phones[2:], "waiting")
    assert len(list(inbox.iterdir())) == 2
    back = time.monotonic()
    with running(course, course / "out", tmp_path, *ports) as host:
        for phone in phones:
            phone.state("received")
        print(f"\nsix phones received {time.monotonic() - back:.1f} s after the host was started again")
        place, cookie = come_in(host.ways["instructor"])
        seen = json.loads(place.get("/state", **cookie).body)["people"][:6]
        (ended,) = host.end()
    receipts = [phone.receipt() for phone in phones]
    assert (receipts[:2], len(set(receipts) - {""})) == (early, 6)
    assert [one["receipts"][0].split()[-1] for one in seen] == receipts
    assert ended["counts"] == {"sheets": 6, "people": 6, "of": 8, "set_aside": 0}
    assert second_answers(inbox) == dict(zip(codes(), (False, False, True, True, True, True), strict=False))


def all_hand_in(phones: list[Phone], state: str) -> None:
    """Each hands in, then all pages say so."""
    for phone in phones:
        phone.hand_in()
    for phone in phones:
        phone.state(state)


def second_answers(inbox: Path) -> dict[str, bool]:
    """By code, whether the second question was answered; every sheet is whole and of this class."""
    sheets = [sheet_of(path.read_bytes()) for path in inbox.iterdir()]
    assert {one.klass for one in sheets} == {"spring"}
    return {one.code: one.answers[1].value is not None for one in sheets}


def test_a_phone_loads_little(course: Path, tmp_path: Path, browser: Browser) -> None:
    """The entry and one version with all that they need; a second look asks for almost nothing."""
    with running(course, course / "out", tmp_path, "--port", "0", "--hall", own_address()) as host:
        phone = bring(browser, KINDS[2])
        phone.join(host.ways["hall"], codes()[0])
        first = sum(phone.sizes)
        phone.page.reload()
        phone.page.wait_for_selector("#paper:not([hidden])")
        again = sum(phone.sizes) - first
        phone.context.close()
    print(f"\nentry and version {version_of(codes()[0], 2)}: {first:,} bytes; loaded again: {again:,} bytes")
    assert first < MOST_BYTES
    assert again < first / 5


def test_the_instructor_sees_who_is_in(course: Path, tmp_path: Path, browser: Browser) -> None:
    """Joined, then how far, without being asked; and nothing else of a person is sent."""
    with running(course, course / "out", tmp_path, "--port", "0", "--hall", own_address()) as host:
        sent: list[str] = []
        phone = bring(browser, KINDS[4])
        phone.page.on("request", lambda one: sent.append(one.post_data or "") if "/here" in one.url else None)
        place, cookie = come_in(host.ways["instructor"])
        phone.join(host.ways["hall"], codes()[7])
        assert waited(lambda: state_of(place, cookie) == "joined")
        phone.choose(0, 0)
        assert waited(lambda: state_of(place, cookie) == "working")
        phone.context.close()
    assert {tuple(sorted(json.loads(one))) for one in sent} == {("answered", "code", "of")}


def state_of(place: Place, cookie: dict[str, str]) -> str:
    """Where the last person on the roster stands."""
    people = json.loads(place.get("/state", **cookie).body)["people"]
    return str(people[7]["state"])


def waited(holds: Callable[[], bool], seconds: float = 20) -> bool:
    """Whether it comes to hold in time."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if holds():
            return True
        time.sleep(0.1)
    return False
