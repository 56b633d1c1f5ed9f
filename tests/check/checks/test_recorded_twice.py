"""A fact is recorded with one value a visit."""

from typing import Any

import pytest

from builder.check.checks.recorded_twice import check
from tests.check.small_course import evidence
from tests.judge.small import case

EXCEPT = {"set": "short", "all_no_except": {"fever": "yes"}}


@pytest.mark.parametrize(
    ("visit", "history"),
    [
        ({}, {}),
        ({"screen": EXCEPT}, {}),
        ({"screen": EXCEPT, "findings": {"fever": "yes"}}, {"fever": "yes"}),
        ({"screen": None, "findings": {"fever": "yes"}}, {"numb_skin": "yes"}),
    ],
)
def test_one_value_is_silent(visit: dict[str, Any], history: dict[str, Any]) -> None:
    """Recorded once, or alike in several places."""
    assert list(check(evidence(case(visit, history=history)))) == []


@pytest.mark.parametrize(
    ("visit", "history", "message"),
    [
        (
            {"findings": {"fever": "yes"}},
            {},
            "`fever` is no in one place and yes in another of the same visit.",
        ),
        ({}, {"fever": "yes"}, "`fever` is yes in one place and no in another of the same visit."),
        (
            {"findings": {"cool_head": "no"}},
            {"cool_head": "yes"},
            "`cool_head` is yes in one place and no in another of the same visit.",
        ),
        (
            {"findings": {"recalled_flexion": 90}},
            {"recalled_flexion": 91},
            "`recalled_flexion` is 91 in one place and 90 in another of the same visit.",
        ),
    ],
)
def test_two_values_are_told(visit: dict[str, Any], history: dict[str, Any], message: str) -> None:
    """History against screen and findings, screen against findings, both values in words."""
    (found,) = check(evidence(case(visit, history=history)))
    assert (found.file, found.path, found.message) == ("cases/bruise.yml", ("visits", 0), message)
    assert found.remedy == "Keep one; an exception to a screen stands under `all_no_except`."
