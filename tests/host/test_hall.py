"""The hall: a receipt once a sheet is safe, a line where it cannot be, and nothing of anything else."""

import errno
import json
from pathlib import Path

import pytest

from builder.doors.serve import Asked
from builder.flow.hall import OpenClass, TrayFull
from tests.host.made import code_for, codes, hall_of, made, sheet
from tests.records.made import answers, sheet_bytes

SHEETS = "classes/spring/answers"


def told(answer: tuple[int, bytes]) -> tuple[int, dict[str, str]]:
    """The status and what it says."""
    return answer[0], json.loads(answer[1])


def test_a_receipt_means_that_the_sheet_lies_in_the_inbox(tmp_path: Path) -> None:
    """Bytes as they came; the same again has the same receipt; a newer one has its own."""
    host, data = made(tmp_path), sheet(codes()[0])
    status, first = told(host.ask("/hand", data))
    assert (status, len(first["received"]), first["at"][-6:-3]) == (
        200,
        7,
        first["at"][-6] + first["at"][-5:-3],
    )
    assert told(host.ask("/hand", data)) == (200, first)
    newer = told(host.ask("/hand", sheet(codes()[0], rev=2)))[1]
    assert newer["received"] != first["received"]
    kept = [path.read_bytes() for path in (tmp_path / SHEETS).iterdir()]
    assert data in kept
    assert len(kept) == 2
    assert told(made(tmp_path).ask("/hand", data)) == (200, first)


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"{", "no readable JSON"),
        (sheet(codes()[0])[:-9], "no readable JSON"),
        (sheet(codes()[0], **{"class": "autumn"}), "class `autumn`"),
        (sheet(code_for("A", "ZZZZZZZ")), "not in the roster"),
        (sheet(codes()[0], test="quiz"), "no test `quiz`"),
        (sheet(codes()[0], crc32="00000000"), "checksum"),
        (b"x" * 300_000, "larger than 256,000 bytes"),
        (b"", "no readable JSON"),
    ],
)
def test_what_cannot_be_taken_is_said_and_kept(tmp_path: Path, data: bytes, words: str) -> None:
    """In a line for the participant; the raw bytes lie aside, and the instructor sees why."""
    host = made(tmp_path)
    status, said = told(host.ask("/hand", data))
    assert status == 422
    assert words in said["line"]
    assert "received" not in said
    assert words in str(host.own.state()["aside"])
    assert [path.read_bytes() for path in (tmp_path / "classes/spring/set_aside").glob("*.json")] == [data]
    assert not (tmp_path / SHEETS).exists()


def test_a_code_put_on_the_roster_lets_the_sheet_in(tmp_path: Path) -> None:
    """A walk-in: the sheet set aside is taken as soon as the roster is saved, and sending again works."""
    host, code = made(tmp_path), code_for("A", "ZZZZZZZ")
    data = sheet(code)
    assert host.ask("/hand", data)[0] == 422
    roster = tmp_path / "classes" / "spring" / "roster.csv"
    text = roster.read_text(encoding="utf-8")
    row = "Walk In,,,walk@lanternfall.example,no," + code
    roster.write_text(
        f"{text.rstrip()}\n{row}{',' * (text.splitlines()[0].count(',') - row.count(','))}\n", "utf-8"
    )
    people = host.own.state()["people"]
    assert [one["state"] for one in people if one["name"] == "Walk In"] == ["handed"]  # type: ignore[attr-defined]
    assert host.own.state()["aside"] == []
    assert host.ask("/hand", data)[0] == 200


def test_a_class_that_cannot_be_read_changes_nothing(tmp_path: Path) -> None:
    """The class from before still counts, and the instructor is told until it is mended."""
    host = made(tmp_path)
    file = tmp_path / "classes" / "spring" / "class.yml"
    good = file.read_text(encoding="utf-8")
    file.write_text("odd: [", encoding="utf-8")
    assert "to mend" in str(host.own.state()["notices"])
    assert host.ask("/hand", sheet(codes()[0]))[0] == 200
    file.write_text(good, encoding="utf-8")
    assert host.own.state()["notices"] == []


@pytest.mark.parametrize(
    "error", [OSError(errno.ENOSPC, "No space left on device"), PermissionError(13, "denied")]
)
def test_a_full_disk_is_no_receipt(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, error: OSError) -> None:
    """The phone is told to try again, the instructor why; with room again the same sheet is taken."""
    heard: list[str] = []
    host, data = made(tmp_path, heard=heard), sheet(codes()[0])

    def full(*_: object) -> None:
        raise error

    with monkeypatch.context() as patched:
        patched.setattr(OpenClass, "take", full)
        status, said = told(host.ask("/hand", data))
    assert status == 503
    assert "received" not in said
    assert str(error.strerror) in heard[0]
    assert told(host.ask("/hand", data))[0] == 200
    assert host.notices.lines() == []


def test_a_full_tray_is_said(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """To the participant without the reason, to the instructor with it."""
    host = made(tmp_path)

    def full(*_: object) -> None:
        raise TrayFull("400 sheets were set aside.", "")

    monkeypatch.setattr(OpenClass, "take", full)
    assert told(host.ask("/hand", sheet(codes()[0])))[0] == 422
    assert host.notices.lines()[0].startswith("400 sheets")


def test_a_phone_tells_where_it_stands_and_nothing_more(tmp_path: Path) -> None:
    """Known codes alone; what is odd is not believed."""
    host, code = made(tmp_path), codes()[0]
    spaced = f"{code[:3]} {code[3:6].lower()}-{code[6:]}"
    assert host.ask("/here", json.dumps({"code": spaced, "answered": 3, "of": 10}).encode())[0] == 200
    for odd in (
        *(b"", b"[]", b"{}", b"3", b"\xff", b"[" * 5000),
        json.dumps({"code": code_for("B"), "answered": 1, "of": 2}).encode(),
        json.dumps({"code": code, "answered": -1, "of": 2}).encode(),
        json.dumps({"code": code, "answered": 3, "of": 2}).encode(),
        json.dumps({"code": code, "answered": True, "of": 2}).encode(),
        json.dumps({"code": code, "answered": "1", "of": 2}).encode(),
        json.dumps({"code": code, "answered": 1, "of": 2, "more": "x" * 400}).encode(),
    ):
        assert host.ask("/here", odd)[0] in {400, 422}, odd
    places = host.board.places(host.desk.taught.participants, 0)
    assert [(one.state, one.answered) for one in places[:2]] == [("working", 3), ("missing", 0)]


@pytest.mark.parametrize(
    "path", ["/state", "/counts", "/open", "/shut", "/screen", "/desk.js", "/hand", "/here"]
)
def test_nothing_of_the_instructor_is_here(tmp_path: Path, path: str) -> None:
    """Neither pages nor numbers, and nothing can be opened from the hall; a tray is not looked into."""
    host = made(tmp_path)
    assert host.ask(path)[0] == 404
    if path not in {"/hand", "/here"}:
        assert host.ask(path, b'{"address": "127.0.0.1"}')[0] == 404


RAW = (
    "/../private/keys/final.json",
    "/..%2f..%2fprivate/keys/final.json",
    "/%2e%2e/%2e%2e/course.yml",
    "/....//course.yml",
    "/tests/..%5c..%5ccourse.yml",
    "//etc/passwd",
    "/%00",
    "/classes/spring/roster.csv",
    "/classes/spring/answers/",
    "/private/",
    "/course.yml",
    "/tests/",
    "/assets",
    "/.hall_secret",
    "http://127.0.0.1/index.html/../../course.yml",
)


def test_the_hall_reaches_the_site_alone(tmp_path: Path) -> None:
    """Each way in, as raw bytes over the network; the course, its class and its keys are not there."""
    host = made(tmp_path)
    with hall_of(host) as place:
        for path in RAW:
            head = f"GET {path} HTTP/1.1\r\nHost: {place.host}\r\nConnection: close\r\n\r\n".encode()
            answer = place.raw(head)
            assert answer.partition(b"\r\n")[0].split()[1] in {b"404", b"400"}, path
            assert b"Vantornel" not in answer
        assert place.get("/index.html").status == 200
        assert place.get("/").headers["Location"] == "/index.html"
        assert place.post("/hand", sheet(codes()[0]), Origin="http://evil.example").status == 403
        assert place.post("/hand", sheet(codes()[0]), host="evil.example").status == 421
        assert place.post("/hand", b"x" * 2_000_000).status == 413
        assert place.post("/hand", sheet(codes()[0])).status == 200
    assert sheet_bytes(codes()[0], answers()) == next((tmp_path / SHEETS).iterdir()).read_bytes()


def test_what_pages_are_told_is_the_class_alone(tmp_path: Path) -> None:
    """The script is the same for everyone; a page names the class and no person."""
    host = made(tmp_path)
    assert host.ask("/host.js")[0] == 200
    page = host.hall.answer(Asked("GET", "/tests/final.html")).body.decode("utf-8")
    assert 'data-hall="{&quot;class&quot;: &quot;spring&quot;, ' in page
    assert "data-test></script>" in page
    assert not [one.name for one in host.desk.taught.participants if one.name in page]
