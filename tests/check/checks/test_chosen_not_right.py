"""Every chosen option is right, or is told why not."""

from typing import Any

import pytest

from builder.check.checks.chosen_not_right import check
from tests.check.small_course import evidence
from tests.judge.small import case

GOOD = {"card": "cold", "written": {"minutes": 15, "barrier": "yes"}}
UNASKED = {"screen": {"set": "none"}, "findings": {"fever": "no"}}


def test_a_right_choice_is_silent() -> None:
    """OK as written, at worst too, and serving the aim."""
    assert list(check(evidence(case({"chosen": [GOOD, {"card": "protect"}]})))) == []


@pytest.mark.parametrize(
    ("visit", "message", "remedy", "rules"),
    [
        (
            {"chosen": [{"card": "stroke"}]},
            "Stroke is chosen, but the rules say not here (baseline.stroke: Because).",
            "Choose another card, or correct what was found.",
            ("baseline.stroke",),
        ),
        (
            {"chosen": [{"card": "cold", "written": {"minutes": 30, "barrier": "yes"}}]},
            "Cold is chosen, but the rules say only if changed (baseline.cold: Because).",
            "Write: time at most 20 min.",
            ("baseline.cold",),
        ),
        (
            {"chosen": [{"card": "cold", "written": {"minutes": 15}}]},
            "Cold is chosen, but the rules say only if changed at worst (baseline.cold: Because).",
            "Write: cloth between.",
            ("baseline.cold",),
        ),
        (
            {"chosen": [{"card": "stroke", "site": "proximal"}], "screen": None},
            "Stroke is chosen, but the rules say not here at worst (refer_ends: Why refer_ends).",
            "Record: fever.",
            ("refer_ends",),
        ),
        (
            {"chosen": [{"card": "stroke", "site": "proximal"}]},
            "Stroke is chosen, but the rules say it does not serve today's aim.",
            "Choose a card that serves the aim: limit.",
            ("aim.limit",),
        ),
    ],
)
def test_a_choice_that_is_not_right_is_told(
    visit: dict[str, Any], message: str, remedy: str, rules: tuple[str, ...]
) -> None:
    """The strictest reason, and what mends it: another dose, a record, or another card."""
    (found,) = check(evidence(case(visit)))
    assert (found.file, found.path) == ("cases/bruise.yml", ("visits", 0, "chosen", 0))
    assert (found.message, found.remedy, found.rules) == (message, remedy, rules)


def test_what_another_check_tells_better_is_silent() -> None:
    """Only a record is wanting; or the session's own action is, and the aim is its."""
    assert list(check(evidence(case({"chosen": [GOOD], **UNASKED})))) == []
    fever = {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}, "phase": "none"}
    assert list(check(evidence(case({"chosen": [{"card": "protect"}], **fever})))) == []


def test_each_wrong_choice_has_its_own_place() -> None:
    """Second visit, second option."""
    visits: tuple[dict[str, Any], ...] = (
        {},
        {"id": "later", "chosen": [{"card": "protect"}, {"card": "stroke"}]},
    )
    assert [one.path for one in check(evidence(case(*visits)))] == [("visits", 1, "chosen", 1)]
