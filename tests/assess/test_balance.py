"""Pools in which one answer is nearly always right."""

from dataclasses import replace
from typing import Any

import pytest

from builder.assess.balance import FEWEST, one_sided
from builder.assess.papers import pool_of
from builder.model.judgement import SessionJudgement, VisitJudgement
from builder.place import Place, Places
from tests.assess.sample import REFERRED, a_test, case, course, judged_visit

ASKING = SessionJudgement("ask_first", None, (), (), None)
STOPPED: dict[str, dict[str, Any]] = {
    "refer": {"session": REFERRED, "doses": ()},
    "ask": {"session": ASKING, "doses": ()},
}


def told(*sessions: str, topic: str = "session") -> list[str]:
    """What is said of a pool of one case whose visits go on or refer, as given."""
    one = case("alpha", len(sessions))
    plan = [{"objective": "choose", "topic": topic, "count": 1}]
    made = course([one], tests=[a_test(["alpha"], plan=plan)])
    judged: dict[str, tuple[VisitJudgement, ...]] = {
        "alpha": tuple(
            judged_visit(visit.id, **STOPPED.get(session, {}))
            for visit, session in zip(one.visits, sessions, strict=True)
        )
    }
    places = {"course.yml": Places(Place("course.yml"), {("tests", 0, "cases"): Place("course.yml", 30, 5)})}
    test = made.file.tests[0]
    found = list(one_sided(replace(made, places=places), 0, test, pool_of(made, test, judged)))
    assert all((one.place.line, one.level) == (30, "advice") for one in found)
    return [one.message for one in found]


@pytest.mark.parametrize(
    ("on", "refer", "ask", "found"),
    [(2, 2, 1, 0), (3, 1, 1, 1), (4, 0, 0, 1), (4, 4, 2, 0), (1, 2, 1, 1), (FEWEST - 1, 0, 0, 0)],
)
def test_more_than_twice_by_chance_is_too_much(on: int, refer: int, ask: int, found: int) -> None:
    """With five answers exactly two in five are even; too few questions tell nothing."""
    assert len(told(*["go_on"] * on, *["refer"] * refer, *["ask"] * ask)) == found


def test_it_says_what_a_guess_would_get() -> None:
    """The answer, how often it is right, and of how many."""
    (said,) = told("go_on", "go_on", "go_on", "refer")
    assert said.startswith("“Go on with the session” is right in 3 of the 4 questions on session")
    assert said.endswith("a guess at it gets 75 %.")


def test_what_is_not_asked_may_be_one_sided() -> None:
    """A plan without questions about the session has none to guess."""
    assert told("go_on", "go_on", "go_on", "go_on", topic="option") == []
