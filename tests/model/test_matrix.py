"""What serves each objective, and what serves none."""

from dataclasses import replace
from typing import Any

import pytest

from builder.model.library import Course
from builder.model.matrix import Hole, items_without_objective, lessons_without_objective, matrix
from tests.check.small_course import course
from tests.render.sample_judged import judged_course

ITEM = {"day": 1, "start": "09:00", "end": "10:00", "title": "Cold", "kind": "lecture"}
TEST = {"id": "final", "title": "Final", "cases": ["thigh"], "seed": "s", "pass_mark": "75 %"}
PLAN = {"tests": [{**TEST, "plan": [{"objective": "one", "topic": "phase", "count": 3}]}]}


def holes(made: Course) -> tuple[Hole, ...]:
    """What the first objective lacks."""
    return matrix(made)[0].holes


def test_everything_that_serves_an_objective_is_found() -> None:
    """Lessons by the cases they place, practice once, agenda, rows of the plan, and lines of a rubric."""
    first, second = matrix(judged_course())
    assert [one.title for one in first.lessons] == ["Tissue heals in phases"]
    assert [one.id for one in first.practice] == ["landing"]
    assert len(first.agenda) == 2
    assert [(test.id, row.count) for test, row in first.planned] != []
    assert first.proofs == ()
    assert [line.id for proof in second.proofs for line in proof.lines] == ["agree", "work"]
    assert (second.lessons, second.practice, second.agenda, second.planned) == ((), (), (), ())


def test_a_line_of_a_rubric_may_prove_what_its_station_does_not() -> None:
    """Its own objectives stand instead of the station's."""
    made = judged_course()
    station = made.stations["friction_station"]
    agree, work = station.criteria
    other = station.model_copy(
        update={"criteria": (agree.model_copy(update={"objectives": ("phases",)}), work)}
    )
    first, second = matrix(replace(made, stations={other.id: other}))
    assert [line.id for proof in first.proofs for line in proof.lines] == ["agree"]
    assert [line.id for proof in second.proofs for line in proof.lines] == ["work"]


@pytest.mark.parametrize(
    ("more", "expected"),
    [
        ({}, ("lesson", "practice", "reference", "proof")),
        ({"agenda": [ITEM]}, ("lesson", "practice", "minutes", "reference", "proof")),
        ({"agenda": [{**ITEM, "objectives": ["one"]}], **PLAN}, ("lesson", "practice", "reference")),
        (
            {
                "lessons": [{"file": "a.md", "title": "A", "objectives": ["one"]}],
                "objectives": [{"id": "one", "text": "Choose.", "references": ["ryan1991"]}],
            },
            ("practice", "proof"),
        ),
    ],
)
def test_what_an_objective_lacks_is_told(more: dict[str, Any], expected: tuple[Hole, ...]) -> None:
    """A course without an agenda owes it no minutes."""
    assert holes(course(**more)) == expected


def test_what_serves_no_objective_is_told() -> None:
    """Lessons, lectures and hands-on work; breaks, meals and tests need none."""
    kinds = ("lecture", "break", "hands_on", "meal", "test")
    made = course(
        agenda=[{**ITEM, "kind": kind} for kind in kinds],
        lessons=[{"file": "a.md", "title": "A"}, {"file": "b.md", "title": "B", "objectives": ["one"]}],
    )
    assert items_without_objective(made) == (0, 2)
    assert [one.title for one in lessons_without_objective(made)] == ["A"]
