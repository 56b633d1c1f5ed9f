"""Station sheets held against station and roster."""

from pathlib import Path

import pytest

from builder.model.station import Station, StationSheet
from builder.read.course import read_course
from builder.read.station_sheets import sheet_faults
from builder.read.written import as_entry, read_written
from tests.read.folders import BASE
from tests.read.sheets import BEA

TEXT = (BASE / "course/classes/may/stations/vantornel.yml").read_text(encoding="utf-8")


def stations() -> dict[str, Station]:
    """The stations of the small course."""
    course, _ = read_course(BASE / "course", BASE / "content")
    assert course is not None
    return course.stations


@pytest.mark.parametrize(
    ("old", "new", "faults"),
    [
        ("cooling", "cooling", []),
        ("cooling", "colling", [("station_unknown", 2)]),
        (BEA, "FRHGCYSSX", [("code_unknown", 3)]),
        (BEA, "QZVNRBLAX", [("code_wrong", 3)]),
        ("{cloth: 1}", "{cloth: 2}", [("level_unknown", 5)]),
        ("{cloth: 1}", "{cloth: -1}", [("level_unknown", 5)]),
        ("{cloth: 1}", "{}", [("criterion_not_marked", 5)]),
        ("{cloth: 1}", "{cloth: 1, ice: 1}", [("criterion_unknown", 5)]),
        ("{cloth: 1}", "{cloth: 1}\nseen: [bare_skin, bare]", [("automatic_fail_unknown", 6)]),
        ("{cloth: 1}", "{cloth: many}", [("number_expected", 5)]),
        ("examiner: Tamsin Oakfell\n", "", [("key_missing", 1)]),
    ],
)
def test_what_does_not_hold_is_told(
    old: str, new: str, faults: list[tuple[str, int]], tmp_path: Path
) -> None:
    """Station, code, levels and automatic fails must be there; what is not marked is a warning."""
    (tmp_path / "a.yml").write_text(TEXT.replace(old, new), encoding="utf-8")
    entry = as_entry(StationSheet, read_written(tmp_path / "a.yml", "a.yml"))
    found = list(sheet_faults(entry, stations(), {BEA}))
    assert [(one.check, one.place.line) for one in found] == faults
    assert [one.level == "warning" for one in found] == [
        check == "criterion_not_marked" for check, _ in faults
    ]


def test_a_station_with_faults_of_its_own_is_not_held_against(tmp_path: Path) -> None:
    """The station's own fault is told where it is."""
    (tmp_path / "a.yml").write_text(TEXT.replace("cloth", "ice"), encoding="utf-8")
    entry = as_entry(StationSheet, read_written(tmp_path / "a.yml", "a.yml"))
    assert list(sheet_faults(entry, {"cooling": None}, {BEA})) == []
