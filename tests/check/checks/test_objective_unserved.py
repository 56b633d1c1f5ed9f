"""Every objective is taught and proven."""

from typing import Any

from builder.check.checks.objective_unserved import check
from tests.check.small_course import evidence

ITEM = {"day": 1, "start": "09:00", "end": "10:00", "title": "Cold", "kind": "lecture"}
TEST = {"id": "final", "title": "Final", "cases": ["thigh"], "seed": "s", "pass_mark": "75 %"}


def told(taught: list[str], asked: str | None) -> list[str]:
    """What is said of the objective `one`, with an agenda and a test that name some."""
    plan = [{"objective": asked, "topic": "phase", "count": 1}]
    more: dict[str, Any] = {"tests": [{**TEST, "plan": plan}]} if asked else {}
    found = check(evidence(agenda=[{**ITEM, "objectives": taught}], **more))
    return [one.message for one in found]


def test_an_objective_that_is_taught_and_asked_for_is_silent() -> None:
    """By the agenda and by a row of a plan."""
    assert told(["one"], "one") == []


def test_holes_are_named() -> None:
    """What is not taught, what is not asked for, and both at once."""
    taught, asked = "taught by no lesson and no part of the agenda", "asked for by no test and no station"
    assert told([], "one") == [f"The objective `one` is {taught}."]
    assert told(["one"], None) == [f"The objective `one` is {asked}."]
    assert told([], None) == [f"The objective `one` is {taught} and {asked}."]


def test_a_lesson_teaches_too() -> None:
    """A course without an agenda is taught by its lessons."""
    lessons = [{"file": "a.md", "title": "A", "objectives": ["one"]}]
    (found,) = check(evidence(lessons=lessons))
    assert "taught by" not in found.message
