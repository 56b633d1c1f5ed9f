"""Empty cells of the matrix of objectives."""

from typing import Any

from builder.check.checks.objective_hole import check
from tests.check.small_course import evidence

ITEM = {"day": 1, "start": "09:00", "end": "10:00", "title": "Cold", "kind": "lecture"}
TEST = {"id": "final", "title": "Final", "cases": ["thigh"], "seed": "s", "pass_mark": "75 %"}
PROVEN = {"tests": [{**TEST, "plan": [{"objective": "one", "topic": "phase", "count": 1}]}]}
LESSON = {"lessons": [{"file": "a.md", "title": "A", "objectives": ["one"]}]}


def told(**more: Any) -> list[str]:  # noqa: ANN401 - keys of course.yml
    """What is said of a course."""
    return [one.message for one in check(evidence(**more))]


def test_what_is_missing_is_told_in_one_sentence() -> None:
    """Practice, and time where there is an agenda."""
    assert told(**PROVEN, **LESSON) == ["The objective `one` has no practice case."]
    assert told(**PROVEN, **LESSON, agenda=[ITEM]) == [
        "The objective `one` has no practice case, no part of the agenda."
    ]


def test_what_is_neither_taught_nor_proven_is_told_by_its_own_check() -> None:
    """One finding is enough."""
    assert told(**PROVEN) == []
    assert told(**LESSON) == []


def test_references_are_owed_once_one_objective_has_some() -> None:
    """They stand beside each objective."""
    objectives = [
        {"id": "one", "text": "Choose."},
        {"id": "two", "text": "Refer.", "references": ["ryan1991"]},
    ]
    found = told(**PROVEN, **LESSON, objectives=objectives)
    assert found == ["The objective `one` has no practice case, no reference."]
