"""The host as it runs: killed and started anew it loses nothing; Ctrl-C ends it and says what came in."""

import json
import shutil
import signal
from pathlib import Path
from threading import Event
from zoneinfo import ZoneInfo

import pytest

from builder.doors.serve import Answer
from builder.host import run
from builder.host.entrance import Entrance
from builder.host.notices import Notices
from tests.demo.small import small_course
from tests.doors.serve.asking import Got, Place
from tests.host.made import codes, sheet
from tests.host.running import free_port, own_address, running
from tests.render.sample_site import built


@pytest.fixture(scope="module")
def course(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A course whose class has nothing yet, built."""
    folder = small_course(tmp_path_factory.mktemp("host") / "a course é")
    shutil.rmtree(folder / "classes" / "spring" / "answers")
    shutil.copytree(built(), folder / "out" / "publish")
    return folder


def come_in(own: str) -> tuple[Place, dict[str, str]]:
    """The instructor's place, and the cookie that the address in the terminal brings."""
    at, _, query = own.removeprefix("http://").partition("/")
    place = Place(int(at.rpartition(":")[2]), [])
    led = place.get(f"/{query}")
    assert led.status == 307
    return place, {"cookie": led.headers["Set-Cookie"].partition(";")[0]}


def test_it_is_killed_and_comes_back(course: Path, tmp_path: Path) -> None:
    """What was confirmed is there; the same sheet again has the same receipt; Ctrl-C tells the sum."""
    ports = ("--port", str(free_port()), "--hall", own_address())
    with running(course, course / "out", tmp_path, *ports) as host:
        first = host.hall.post("/hand", sheet(codes()[0]))
        assert first.status == 200
        assert host.hall.post("/hand", b"odd").status == 422
        host.end(signal.SIGKILL)
    assert len(list((course / "classes/spring/answers").iterdir())) == 1
    with running(course, course / "out", tmp_path, *ports) as host:
        assert host.hall.post("/hand", sheet(codes()[0])).body == first.body
        assert host.hall.post("/hand", sheet(codes()[1])).status == 200
        place, cookie = come_in(host.ways["instructor"])
        state = json.loads(place.get("/state", **cookie).body)
        assert [one["state"] for one in state["people"]][:3] == ["handed", "handed", "missing"]
        assert state["way"] == host.ways["hall"]
        (ended,) = host.end()
        assert host.process.returncode == 0
    assert (ended["event"], ended["ways"]) == ("ended", None)
    assert ended["counts"] == {"sheets": 2, "people": 2, "of": 8, "set_aside": 1}


def test_the_two_sides_are_apart(course: Path, tmp_path: Path) -> None:
    """The instructor's port answers on loopback alone, the hall's on its one address alone."""
    address = own_address()
    with running(course, course / "out", tmp_path, "--port", "0", "--hall", address) as host:
        own, _ = come_in(host.ways["instructor"])
        for place in (Place(own.port, [], address), Place(host.hall.port, [])):
            with pytest.raises(OSError, match=r".*"):
                place.get("/")
        got: Got = host.hall.get("/index.html")
        assert got.status == 200
        assert "unsafe" not in got.headers["Content-Security-Policy"]


class Clock:
    """A clock that a test sets; it is looked at once a round."""

    def __init__(self, stop: Event, *times: float) -> None:
        """With the times it will show."""
        self._stop, self._times = stop, list(times)

    def __call__(self) -> float:
        """The next time; at the last one all is over."""
        if len(self._times) == 1:
            self._stop.set()
        return self._times.pop(0)


@pytest.mark.parametrize(("later", "said"), [(19.0, []), (3600.0, ["host_asleep 04:00 05:00"])])
def test_sleep_is_noticed(monkeypatch: pytest.MonkeyPatch, later: float, said: list[str]) -> None:
    """From when to when, in the zone of the class; a slow moment is no sleep."""
    monkeypatch.setattr(run, "LOOK_AGAIN", 0.0)
    heard: list[str] = []
    notices = Notices(lambda word, **blanks: " ".join([word, *map(str, blanks.values())]), heard.append)
    entrance, stop = Entrance(lambda _: Answer(b""), 0, notices, lambda: ()), Event()
    eight = 1_776_585_600.0  # 2026-04-19, 08:00 UTC
    run.watch(entrance, notices, ZoneInfo("America/New_York"), stop, Clock(stop, eight, eight + later))
    assert heard == said
