"""The hall under strain: a crowd within seconds, and a host killed again and again while sheets pour in."""

import json
import os
import shutil
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from hashlib import sha256
from http.client import HTTPException
from pathlib import Path
from random import Random

import pytest

from builder.flow.hall import open_class
from tests.demo.small import small_course
from tests.doors.serve.asking import Place
from tests.host.crowd import crowd, hand_in_all, kept, share
from tests.host.made import sheet
from tests.host.running import Running, free_port, own_address, start
from tests.render.sample_site import built

CROWD, SECONDS = 200, 5.0
KILLS = int(os.environ.get("KILLS", "25"))
SLOWEST = 2.0
PHONES, REVISIONS = 40, 200
PAUSE = 0.8 * KILLS / REVISIONS  # so that sheets still pour in at the last kill


@pytest.fixture
def course(tmp_path: Path) -> Path:
    """A course whose class has nothing yet, built."""
    folder = small_course(tmp_path / "course")
    shutil.rmtree(folder / "classes" / "spring" / "answers")
    (folder / "out").mkdir()
    (folder / "out" / "publish").symlink_to(built(), target_is_directory=True)
    return folder


def test_a_crowd_is_received_in_time(course: Path, tmp_path: Path) -> None:
    """Two hundred within five seconds: none is lost, and 99 of 100 wait two seconds at most."""
    codes = crowd(course, CROWD)
    host = start(course, course / "out", tmp_path, "--port", "0", "--hall", own_address())
    came = hand_in_all(host.hall, codes, SECONDS)
    host.end()
    times = [one.seconds for one in came]
    print(
        f"\n{CROWD} sheets within {SECONDS:.0f} s on {os.cpu_count()} cores: median {share(times, 50):.3f} s,"
        f" 99th percentile {share(times, 99):.3f} s, slowest {max(times):.3f} s"
    )
    assert kept(course) == {sha256(one.data).hexdigest() for one in came}
    assert share(times, 99) <= SLOWEST


@dataclass
class Told:
    """What a crowd of phones was told: receipts by digest, and how often nothing came back."""

    receipts: dict[str, str] = field(default_factory=dict)
    cut: int = 0
    over: bool = False


def phone(hall: Place, code: str, told: Told) -> None:
    """Hand in one revision after the other, each again and again until it is received, as the page does."""
    for rev in range(1, REVISIONS):
        time.sleep(PAUSE)
        data = sheet(code, rev=rev)
        digest = sha256(data).hexdigest()
        while digest not in told.receipts:
            if told.over:
                return
            try:
                got = hall.post("/hand", data)
            except (OSError, HTTPException):
                told.cut += 1
                time.sleep(0.05)
                continue
            if got.status == 200:
                told.receipts[digest] = json.loads(got.body)["received"]


def killed(course: Path, home: Path, ports: tuple[str, ...]) -> Iterator[Running]:
    """A host after the other, each killed at a random moment."""
    moments = Random(11)  # noqa: S311 - the same moments in every run
    for _ in range(KILLS):
        host = start(course, course / "out", home, *ports)
        yield host
        time.sleep(moments.uniform(0.05, 0.8))
        host.process.kill()
        host.process.communicate()


def test_a_host_killed_again_and_again_loses_nothing_confirmed(course: Path, tmp_path: Path) -> None:
    """Whatever was received lies on the disk, whole and once, and has one receipt for ever.

    The death of a process, not of the machine's power.
    """
    port = free_port()
    ports = ("--port", str(port), "--hall", own_address())
    told, hall = Told(), Place(port + 1, [], own_address())
    codes = crowd(course, PHONES)
    with ThreadPoolExecutor(len(codes)) as pool:
        phones = [pool.submit(phone, hall, code, told) for code in codes]
        for _ in killed(course, tmp_path, ports):
            pass
        last = start(course, course / "out", tmp_path, *ports)
        time.sleep(1.0)
        told.over = True
        for one in phones:
            one.result()
    last.end()
    desk = open_class(course, "spring", built())
    inbox = (course / "classes" / "spring" / "answers").glob("[!.]*")
    again = {path.stem: desk.take(path.read_bytes()).receipt for path in inbox}
    confirmed = len(told.receipts)
    print(f"\n{KILLS} kills: {confirmed} sheets confirmed, {told.cut} requests cut off, {len(again)} kept")
    assert 0 < confirmed < PHONES * (REVISIONS - 1), "sheets must still pour in at the last kill"
    assert told.cut >= KILLS
    assert set(told.receipts) <= kept(course)
    assert all(found == again[digest] for digest, found in told.receipts.items())
    assert set(again) == kept(course)
