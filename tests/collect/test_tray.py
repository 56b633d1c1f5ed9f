"""The tray: kept before it is said, the same again is the same, nothing is thrown away."""

import os
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from builder.collect import tray as tray_module
from builder.collect.inbox import LARGEST
from builder.collect.tray import Due, Tray, TrayFull, receipt
from tests.records.kept import collect, opened
from tests.records.made import answers, code_for, folder, person, sheet_bytes

ANN, BEN = person(1), person(2, "B")
ZONE = ZoneInfo("America/New_York")
SECRET = b"s" * 64
GOOD = sheet_bytes(ANN.code, answers())


def due(*codes: str) -> Due:
    """What the class expects, with these codes on its roster."""
    return Due("spring", codes or (ANN.code, BEN.code), ("final",))


def tray(root: Path) -> Tray:
    """A tray over an inbox and a place for the rest."""
    return Tray(root / "answers", root / "set_aside", SECRET, ZONE)


def test_what_was_kept_is_what_collect_takes(tmp_path: Path) -> None:
    """Byte for byte, under a name by digest, and each exactly once."""
    kept = tray(tmp_path)
    newer = sheet_bytes(ANN.code, answers(), rev=2)
    came = [kept.take(data, due()) for data in (GOOD, newer, sheet_bytes(BEN.code, answers("B")), GOOD)]
    assert all(one.taken for one in came)
    assert {path.read_bytes() for path in (tmp_path / "answers").iterdir()} > {GOOD, newer}
    with opened(tmp_path) as store:
        told = collect(store, folder(ANN, BEN), tmp_path / "answers")
    assert (len(told.taken), told.left, told.had) == (3, (), ())
    assert {one.file for one in told.taken} == {f"{one.digest}.json" for one in came}


def test_the_same_again_has_the_same_receipt_and_time(tmp_path: Path) -> None:
    """Also after the host was started anew; another sheet has another."""
    first = tray(tmp_path).take(GOOD, due())
    path = tmp_path / "answers" / f"{first.digest}.json"
    os.utime(path, (1_770_000_000, 1_770_000_000))
    again = tray(tmp_path).take(GOOD, due())
    assert again.receipt == first.receipt
    assert again.at.isoformat() == "2026-02-01T21:40:00-05:00"
    assert tray(tmp_path).take(sheet_bytes(ANN.code, answers(), rev=2), due()).receipt != first.receipt


def test_many_at_once_are_one(tmp_path: Path) -> None:
    """The same sheet sent from many places at the same instant is kept once, with one receipt."""
    kept = tray(tmp_path)
    with ThreadPoolExecutor(12) as pool:
        came = list(pool.map(lambda _: kept.take(GOOD, due()), range(60)))
    assert len({(one.receipt, one.at) for one in came}) == 1
    assert len(list((tmp_path / "answers").iterdir())) == 1


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (GOOD[:-20], "no readable JSON"),
        (GOOD.replace(b'"rev": 1', b'"rev": 1, "rev": 2'), "stands twice"),
        (GOOD.replace(b'"o1"', b'"o2"', 1), "checksum"),
        (sheet_bytes(ANN.code, answers(), **{"class": "autumn"}), "class `autumn`"),
        (sheet_bytes(code_for(999), answers()), "not in the roster"),
        (sheet_bytes(ANN.code, answers(), code="AB\nC"), "no personal code"),
        (sheet_bytes(ANN.code, answers(), test="quiz"), "no test `quiz`"),
        (b"\xff\x00" * 50, "no readable JSON"),
        (b"[" * 100_000, "no readable JSON"),
        (b" " * (LARGEST + 1), "larger than 256,000 bytes"),
    ],
)
def test_what_cannot_be_taken_is_kept_aside(tmp_path: Path, data: bytes, words: str) -> None:
    """Raw bytes and a line with the reason; the inbox stays clean; a new start knows of it."""
    came = tray(tmp_path).take(data, due())
    assert (came.taken, came.receipt) == (False, "")
    assert words in came.fault
    assert came.remedy
    assert (tmp_path / "set_aside" / f"{came.digest}.json").read_bytes() == data
    assert not (tmp_path / "answers").exists()
    found = list(tray(tmp_path).aside())
    assert [(one.digest, one.remedy) for one in found] == [(came.digest, came.remedy)]
    assert words in found[0].fault


def test_what_is_expected_later_is_taken_later(tmp_path: Path) -> None:
    """A walk-in whose code is put on the roster loses nothing; what stays foreign stays aside."""
    kept = tray(tmp_path)
    for data in (GOOD, b"odd"):
        kept.take(data, due(BEN.code))
    assert kept.look_again(due(BEN.code)) == []
    (came,) = kept.look_again(due(BEN.code, ANN.code))
    assert came.code == ANN.code
    assert [one.fault for one in kept.aside()] != []
    assert len(list((tmp_path / "set_aside").iterdir())) == 2
    assert (tmp_path / "answers" / f"{came.digest}.json").read_bytes() == GOOD


def test_the_inbox_is_read_whoever_filled_it(tmp_path: Path) -> None:
    """Files that were put there by hand count as well; what is no sheet is passed over."""
    (tmp_path / "answers").mkdir()
    (tmp_path / "answers" / "from a stick.json").write_bytes(GOOD)
    (tmp_path / "answers" / "odd.json").write_bytes(b"odd")
    (tmp_path / "answers" / "folder").mkdir()
    assert [(one.code, one.test, one.rev, one.of) for one in tray(tmp_path).standing()] == [
        (ANN.code, "final", 1, len(answers())),
    ]


def test_no_one_fills_the_disk(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """So many foreign sheets and so many of one code, a new start included; the rest are still taken."""
    monkeypatch.setattr(tray_module, "MOST_ASIDE", 2)
    monkeypatch.setattr(tray_module, "MOST_A_CODE", 2)
    for number in (1, 2):
        tray(tmp_path).take(b"odd%d" % number, due())
        tray(tmp_path).take(sheet_bytes(ANN.code, answers(), rev=number), due())
    with pytest.raises(TrayFull, match="2 sheets were set aside"):
        tray(tmp_path).take(b"odd3", due())
    with pytest.raises(TrayFull, match=f"Code {ANN.code}"):
        tray(tmp_path).take(sheet_bytes(ANN.code, answers(), rev=3), due())
    assert tray(tmp_path).take(b"odd1", due()).fault
    assert tray(tmp_path).take(sheet_bytes(BEN.code, answers("B")), due()).taken


def test_a_receipt_needs_the_secret() -> None:
    """Nobody makes one from the sheet alone; it reads without mistaking a letter."""
    assert receipt(SECRET, "a" * 64) != receipt(b"t" * 64, "a" * 64)
    assert receipt(SECRET, "a" * 64) == receipt(SECRET, "a" * 64)
    assert len(receipt(SECRET, "a" * 64)) == 7
    assert not set(receipt(SECRET, "b" * 64)) & set("01IOU")
