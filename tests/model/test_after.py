"""The days on which one comes back to a course."""

import json
from datetime import date, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.model.after import INTERVALS, Interval, uid_of

GOLDEN = json.loads((Path(__file__).parents[1] / "golden" / "after.json").read_text(encoding="utf-8"))


@pytest.mark.parametrize("row", GOLDEN["days"], ids=lambda row: row["last"])
def test_days_are_counted_as_a_calendar_does(row: dict[str, str]) -> None:
    """The end of a month, a leap year, the turn of a year and of clocks; the script reads the same rows."""
    last = date.fromisoformat(row["last"])
    assert {one.id: one.after(last).isoformat() for one in INTERVALS} == {
        name: day for name, day in row.items() if name != "last"
    }


@given(st.dates(date(2000, 1, 1), date(2100, 1, 1)))
def test_each_day_comes_after_the_one_before(last: date) -> None:
    """Whatever the last day: in order, and within the months they are named after."""
    days = [one.after(last) for one in INTERVALS]
    assert [last, *days] == sorted({last, *days})
    assert days[2] - last <= timedelta(days=31)
    assert days[3] - last <= timedelta(days=92)


def test_an_event_is_the_same_for_whoever_writes_it() -> None:
    """By course, last day and interval."""
    assert uid_of("ab12", date(2026, 4, 19), Interval("week", 7)) == "ab12-20260419-week@caseloom"
