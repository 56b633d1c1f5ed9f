"""A station passes on points, unless something was seen that fails it outright."""

import pytest

from builder.grade.scoring.rubric import points
from builder.grade.stations import station_requirement
from builder.model.records import Requirement
from builder.model.station import StationSheet
from tests.records.made import STATION, person, station_sheet

ANN, BEN = person(1, "A", "B"), person(2)


def judged(*sheets: StationSheet) -> Requirement:
    """Whether Ann passes with these sheets."""
    return station_requirement(STATION, sheets, ANN)


@pytest.mark.parametrize(
    ("marked", "met", "words"),
    [
        ({"toes": 1, "overlap": 2}, True, "100 % of the points; 75 % passes."),
        ({"toes": 1, "overlap": 1}, True, "80 % of the points"),
        ({"toes": 1, "overlap": 0}, False, "60 % of the points"),
        ({"toes": 1}, False, "60 % of the points; 75 % passes; not marked: overlap."),
        ({"toes": 2, "overlap": 2}, False, "toes 2 is not on the scale"),
        ({"toes": 1, "overlap": 2, "hands": 1}, False, "hands 1 is not on the scale"),
        ({"toes": -1, "overlap": 2}, False, "toes -1 is not on the scale"),
    ],
)
def test_points_are_weighted_and_exact(marked: dict[str, int], met: bool, words: str) -> None:  # noqa: FBT001
    """The weighted share decides; what was not marked earns nothing, what is off the scale is no mark."""
    found = judged(station_sheet(ANN, **marked))
    assert found.met is met
    assert words in found.reason


def test_the_pass_mark_itself_passes() -> None:
    """Three quarters of the points pass a mark of 75 %."""
    four = STATION.model_copy(
        update={
            "criteria": tuple(
                one.model_copy(update={"weight": 3 if one.id == "toes" else 1, "levels": ("no", "yes")})
                for one in STATION.criteria
            )
        }
    )
    sheet = station_sheet(ANN, toes=1, overlap=0)
    assert points(four.criteria, sheet.marked) == four.pass_mark
    assert station_requirement(four, [sheet], ANN).met


@pytest.mark.parametrize("seen", ["numb", "unheard_of"])
def test_what_was_seen_fails_whatever_the_points(seen: str) -> None:
    """An automatic fail fails with full points; one that the station does not know fails too."""
    found = judged(station_sheet(ANN, seen))
    assert not found.met
    assert "whatever the points" in found.reason


def test_within_one_attempt_every_examiner_must_pass() -> None:
    """Where two examiners disagree the stricter decides."""
    assert not judged(station_sheet(ANN), station_sheet(ANN, "numb")).met
    assert not judged(station_sheet(ANN, "numb"), station_sheet(ANN)).met


def test_a_later_attempt_may_pass() -> None:
    """A sheet under the second code is another attempt, and one that passes is enough."""
    again = station_sheet(ANN).model_copy(update={"code": ANN.codes[1].lower()})
    assert judged(station_sheet(ANN, "numb"), again).met


def test_another_s_sheet_is_no_evidence() -> None:
    """Sheets of other people and of other stations are passed over."""
    other = station_sheet(ANN).model_copy(update={"station": "cold"})
    found = judged(station_sheet(BEN), other)
    assert (found.met, found.reason) == (False, "No examiner's sheet has come in.")
