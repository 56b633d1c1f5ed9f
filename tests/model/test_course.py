"""The course file: bounds on what a course may promise and ask."""

from fractions import Fraction
from typing import Any

import pytest
from pydantic import ValidationError

from builder.model.board import BoardRules
from builder.model.course import AgendaItem, CourseFile
from builder.model.plan import CourseTest
from tests.check.small_course import COURSE

TEST: dict[str, Any] = {
    "id": "final",
    "title": "Final",
    "cases": ["bruise"],
    "plan": [{"objective": "one", "topic": "option", "count": 2}],
    "seed": "any words",
    "pass_mark": "70 %",
}
ITEM: dict[str, Any] = {"day": 1, "start": "09:00", "end": "10:30", "title": "Phases", "kind": "lecture"}
BOARD: dict[str, Any] = {
    "format": 1,
    "id": "generic",
    "name": "Own defaults",
    "dated": "2026-11-01",
    "source": "Common practice",
    "minutes_in_hour": 50,
    "hour_name": "contact hour",
    "counted": ["lecture"],
    "attendance_floor": "100 %",
    "note": "None.",
}


def test_a_test_has_mild_defaults_and_an_exact_pass_mark() -> None:
    """Two versions, two tries, part marks; the pass mark is a fraction."""
    made = CourseTest.model_validate(TEST)
    assert (made.versions, made.tries, made.many_policy, made.pass_mark) == (
        2,
        2,
        "plus_minus",
        Fraction(7, 10),
    )


@pytest.mark.parametrize(
    "changed",
    [
        {"cases": []},
        {"plan": []},
        {"plan": [{"objective": "one", "topic": "essay", "count": 2}]},
        {"plan": [{"objective": "one", "topic": "option", "count": 0}]},
        {"versions": 7},
        {"tries": 0},
        {"pass_mark": 70},
        {"many_policy": "guess"},
    ],
)
def test_a_test_stays_within_bounds(changed: dict[str, Any]) -> None:
    """A test without pool or plan, with too many versions or a mark beyond the whole is refused."""
    with pytest.raises(ValidationError):
        CourseTest.model_validate({**TEST, **changed})


@pytest.mark.parametrize("changed", [{"day": 0}, {"start": "25:00"}, {"start": 540}, {"kind": "nap"}])
def test_an_agenda_item_is_a_stretch_of_a_day(changed: dict[str, Any]) -> None:
    """Days count from one; times are times of day, written out."""
    assert AgendaItem.model_validate(ITEM).start.hour == 9
    with pytest.raises(ValidationError):
        AgendaItem.model_validate({**ITEM, **changed})


@pytest.mark.parametrize(
    "changed", [{"minutes_in_hour": 0}, {"minutes_in_hour": 61}, {"attendance_floor": 90}, {"dated": "soon"}]
)
def test_board_rules_are_dated_and_bounded(changed: dict[str, Any]) -> None:
    """An hour has at most sixty minutes, and the rules a date."""
    assert BoardRules.model_validate(BOARD).attendance_floor == 1
    with pytest.raises(ValidationError):
        BoardRules.model_validate({**BOARD, **changed})


@pytest.mark.parametrize(
    "missing", ["provider", "instructor", "audience", "objectives", "disclosures", "delivery"]
)
def test_a_course_says_what_approving_bodies_ask(missing: str) -> None:
    """Who offers it, who teaches, for whom, to what end, and what is disclosed is never left out."""
    assert CourseFile.model_validate(COURSE).boards == ("generic",)
    with pytest.raises(ValidationError, match=missing):
        CourseFile.model_validate({key: value for key, value in COURSE.items() if key != missing})
