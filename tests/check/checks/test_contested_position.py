"""A test rests on a contested point only with the course's own position."""

from typing import Any

from builder.check.checks.contested_position import check
from builder.check.evidence import Finding
from tests.check.small_course import evidence
from tests.judge.small import CARDS, case, content

SIDES = {"point": "cold_at_all", "taught": "Cool it.", "other": "Do not."}
ROWS = [{**row, "contested": SIDES} for row in CARDS[0]["baseline"]]
CONTESTED = content(cards=[{**CARDS[0], "baseline": ROWS}, *CARDS[1:]])
COLD = case({"chosen": [{"card": "protect"}, {"card": "cold", "written": {"minutes": 15, "barrier": "yes"}}]})
TEST: dict[str, Any] = {
    "id": "final",
    "title": "Final",
    "cases": ["bruise"],
    "plan": [{"objective": "one", "topic": "option", "count": 1}],
    "seed": "x",
    "pass_mark": "70 %",
}


def found(**more: object) -> list[Finding]:
    """What is to fix in a course with these keys."""
    return list(check(evidence(COLD, rules=CONTESTED, **more)))


def test_a_tested_point_without_position_is_told() -> None:
    """The chosen option that rests on it, the point, and where to state a position."""
    assert found(tests=[TEST]) == [
        Finding(
            "cases/bruise.yml",
            ("visits", 0, "chosen", 1),
            "This test question rests on a contested point (cold_at_all).",
            "State the course's position under `positions: cold_at_all:` in course.yml.",
            ("baseline.cold",),
        )
    ]


def test_a_stated_position_is_silent() -> None:
    """As taught here."""
    assert found(tests=[TEST], positions={"cold_at_all": "Taught here for comfort."}) == []
    assert len(found(tests=[TEST], positions={"another": "Said."})) == 1


def test_practice_may_rest_on_a_contested_point() -> None:
    """Both sides are shown there anyway."""
    assert found(practice=[{"id": "first", "title": "First", "cases": ["bruise"]}]) == []
