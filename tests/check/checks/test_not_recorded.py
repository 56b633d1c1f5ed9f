"""A fact that a chosen option waits for is recorded."""

from typing import Any

import pytest

from builder.check.checks.not_recorded import check
from tests.check.small_course import evidence
from tests.judge.small import RULES, case, content, rule

COLD = {"card": "cold", "written": {"minutes": 15, "barrier": "yes"}}
STROKE = {"card": "stroke", "site": "proximal"}
UNASKED = {"screen": {"set": "none"}, "findings": {"fever": "no"}}


@pytest.mark.parametrize(
    "visit",
    [
        {"chosen": [COLD, STROKE]},
        {"chosen": [{"card": "protect"}], **UNASKED},
        {"chosen": [{"card": "protect"}], "wrong": [COLD], **UNASKED},
        {"chosen": [{"card": "cold"}]},
    ],
)
def test_what_nothing_waits_for_is_silent(visit: dict[str, Any]) -> None:
    """All recorded; or not, where only a wrong option or nothing at all depends on it; or not written."""
    assert list(check(evidence(case(visit)))) == []


def test_a_missing_fact_is_told_once() -> None:
    """With its label, the visit, how to record it, and every rule that waits for it."""
    again = rule("again", {"numb_skin": "yes"}, options=[{"cards": ["protect"], "answer": "not_yet"}])
    made = content(rules=[*RULES, again])
    (found,) = check(evidence(case({"chosen": [COLD, {"card": "protect"}], **UNASKED}), rules=made))
    assert (found.file, found.path) == ("cases/bruise.yml", ("visits", 0))
    assert found.message == "Numb skin is not recorded, and a chosen option depends on it."
    assert found.remedy == (
        "Add `numb_skin` to the findings or the history, or name a screening set that covers it."
    )
    assert found.rules == ("numb", "again")


def test_the_flag_behind_a_referral_is_told() -> None:
    """Work by hand depends on the flags, though its rule speaks only of the referral."""
    visit = {"chosen": [STROKE], "screen": {"set": "none"}, "findings": {"numb_skin": "no"}}
    assert [one.message for one in check(evidence(case(visit)))] == [
        "Fever is not recorded, and a chosen option depends on it."
    ]
