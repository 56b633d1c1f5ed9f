"""Stations: what is marked, what fails at once, and what an examiner hands in."""

from fractions import Fraction
from typing import Any

import pytest
from pydantic import ValidationError

from builder.model.station import Station, StationSheet

STATION: dict[str, Any] = {
    "format": 1,
    "id": "wrap",
    "title": "A wrap",
    "case": "bruise",
    "visit": "day",
    "minutes": 12,
    "participant": "Treat.",
    "practice_client": "Lie still.",
    "examiner": "Watch.",
    "criteria": [{"id": "asks", "title": "Asks first", "levels": ["No", "Yes"]}],
    "automatic_fails": [{"id": "hurts", "seen": "Goes on through pain."}],
    "pass_mark": "3/4",
}
SHEET: dict[str, Any] = {
    "format": 1,
    "station": "wrap",
    "code": "222222222",
    "examiner": "One",
    "marked": {"asks": 1},
}


def test_a_station_is_read_with_its_defaults() -> None:
    """A criterion weighs one unless it says more; the pass mark is exact."""
    made = Station.model_validate(STATION)
    assert (made.criteria[0].weight, made.objectives, made.pass_mark) == (1, (), Fraction(3, 4))


@pytest.mark.parametrize(
    "changed",
    [
        {"criteria": []},
        {"criteria": [{"id": "asks", "title": "Asks", "levels": ["Only one"]}]},
        {"criteria": [{"id": "asks", "title": "Asks", "levels": ["No", "Yes"], "weight": 0}]},
        {"automatic_fails": []},
        {"minutes": 0},
        {"minutes": 121},
        {"pass_mark": 75},
    ],
)
def test_a_station_stays_within_bounds(changed: dict[str, Any]) -> None:
    """Every station marks something in levels, names what fails at once, and has its time."""
    with pytest.raises(ValidationError):
        Station.model_validate({**STATION, **changed})


@pytest.mark.parametrize(
    "changed", [{"marked": {"asks": "good"}}, {"seen": "hurts"}, {"station": ""}, {"format": 2}]
)
def test_a_station_sheet_is_read_strictly(changed: dict[str, Any]) -> None:
    """Levels are whole numbers and automatic fails a list."""
    assert StationSheet.model_validate(SHEET).seen == ()
    with pytest.raises(ValidationError):
        StationSheet.model_validate({**SHEET, **changed})
