"""The attendance of a class."""

from datetime import datetime

import pytest

from builder.model.taught import Presence
from builder.read.attendance import read_attendance
from tests.read.sheets import BEA, CURRO, MAY, ZONE, sheet, told

HEAD = "code,day,arrived,left\n"
ROW = f"{BEA},1,2026-05-02T09:00-04:00,2026-05-02T10:00-04:00\n"


def read(text: str) -> tuple[tuple[Presence, ...], list[tuple[str, int, int]]]:
    """The presences in a sheet and what is found."""
    presences, found = read_attendance(sheet(text), MAY, ZONE, {BEA})
    return presences, told(found)


def test_presences_are_read_with_their_offset() -> None:
    """Seconds may be left out, a space may part date and time, and the code is tidied."""
    text = HEAD + "qzvn rbla d,1,2026-05-02 09:00:30-04:00,2026-05-02T10:00-04:00\n"
    arrived = datetime.fromisoformat("2026-05-02T09:00:30-04:00")
    left = datetime.fromisoformat("2026-05-02T10:00-04:00")
    assert read(text) == ((Presence(code=BEA, day=1, arrived=arrived, left=left),), [])


@pytest.mark.parametrize(
    ("old", "new", "faults"),
    [
        (BEA, CURRO, [("code_unknown", 2, 1)]),
        (",1,", ",3,", [("day_unknown", 2, 11)]),
        (",1,", ",one,", [("day_unknown", 2, 11)]),
        ("T09:00-04:00", "T09:00", [("time_expected", 2, 13)]),
        ("T09:00-04:00", "", [("time_expected", 2, 13)]),
        ("2026-05-02T09", "2026-02-30T09", [("time_expected", 2, 13)]),
        ("2026-05-02T09:00-04:00", "0001-01-01T00:00+14:00", [("time_expected", 2, 13)]),
        ("2026-05-02T09:00-04:00", "1777726800", [("time_expected", 2, 13)]),
        ("T10:00", "T09:00", [("times_reversed", 2, 36)]),
        (",1,", ",2,", [("wrong_day", 2, 13)]),
        ("T09:00-04:00", "T08:00-05:00", [("offset_odd", 2, 13)]),
    ],
)
def test_a_row_that_does_not_hold_is_told_at_its_cell(
    old: str, new: str, faults: list[tuple[str, int, int]]
) -> None:
    """Who, which day, which times; an offset the place did not have is only a warning."""
    presences, found = read(HEAD + ROW.replace(old, new))
    assert found == faults
    assert len(presences) == (faults[0][0] == "offset_odd")


def test_presences_of_one_person_do_not_overlap() -> None:
    """Leaving for lunch is two rows; being there twice at once is a fault at the later one."""
    later = ROW.replace("T09:00", "T09:59").replace("T10:00", "T11:00")
    assert read(HEAD + ROW + ROW.replace("T10:00", "T11:00").replace("T09:00", "T10:00"))[1] == []
    assert read(HEAD + later + ROW)[1] == [("times_overlap", 2, 13)]


def test_midnight_belongs_to_the_place_of_the_class() -> None:
    """The day is the one on the class's own clock, whatever offset the time was written with."""
    text = HEAD + f"{BEA},1,2026-05-03T02:00+00:00,2026-05-03T03:00+00:00\n"
    assert [check for check, *_ in read(text)[1]] == ["offset_odd", "offset_odd"]


def test_missing_columns_are_told_once() -> None:
    """Without its columns no row is read."""
    assert read("code,day\nX,1\n") == ((), [("sheet_column_missing", 1, 1), ("sheet_column_missing", 1, 1)])
