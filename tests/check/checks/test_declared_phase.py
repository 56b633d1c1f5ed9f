"""The declared phase is the one that time and signs give."""

from typing import Any

import pytest

from builder.check.checks.declared_phase import check
from tests.check.small_course import evidence
from tests.judge.small import case

LATE = {"since_injury": "20 days", "findings": {"recalled_flexion": 100}}
FEVER = {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}}


@pytest.mark.parametrize("visit", [{}, {**LATE, "phase": "remodelling"}, {**FEVER, "phase": "none"}])
def test_the_right_phase_is_silent(visit: dict[str, Any]) -> None:
    """By the calendar, and none where the session ends today."""
    assert list(check(evidence(case(visit)))) == []


@pytest.mark.parametrize(
    ("visit", "message", "remedy"),
    [
        (
            {"phase": "late_repair"},
            (
                "The phase is declared as late repair, but time and signs give acute. "
                "By the calendar, moderate injury of muscle: acute."
            ),
            "Write `phase: acute`, or correct the time or the findings.",
        ),
        (
            {**LATE, "phase": "remodelling", "findings": {"recalled_flexion": 100, "swelling": "rising"}},
            (
                "The phase is declared as remodelling, but time and signs give acute. "
                "By the calendar, mild injury of muscle: remodelling. Swelling is rising."
            ),
            "Write `phase: acute`, or correct the time or the findings.",
        ),
        (
            {**LATE, "phase": "remodelling", "findings": {"recalled_flexion": 100, "swelling": None}},
            (
                "The phase is declared as remodelling, but time and signs give acute or remodelling. "
                "By the calendar, mild injury of muscle: remodelling. Not recorded: Swelling is rising."
            ),
            "Record the findings that are missing, so that one phase remains.",
        ),
        (
            FEVER,
            (
                "The phase is declared as acute, but time and signs give none. "
                "Stop and refer today: the healing phase does not count."
            ),
            "Write `phase: none`, or correct the time or the findings.",
        ),
    ],
)
def test_another_phase_is_told_with_reasons(visit: dict[str, Any], message: str, remedy: str) -> None:
    """What time and signs give, why, and what to write."""
    (found,) = check(evidence(case(visit)))
    assert (found.file, found.path) == ("cases/bruise.yml", ("visits", 0, "phase"))
    assert (found.message, found.remedy) == (message, remedy)


@pytest.mark.parametrize(
    ("visit", "rules"),
    [
        (FEVER, ("fever",)),
        (
            {**LATE, "phase": "remodelling", "findings": {"recalled_flexion": 100, "swelling": "rising"}},
            ("clock.muscle.mild", "sign.rising"),
        ),
    ],
)
def test_it_names_what_the_phase_rests_on(visit: dict[str, Any], rules: tuple[str, ...]) -> None:
    """Its clocks and signs, or the rule that refers."""
    (found,) = check(evidence(case(visit)))
    assert found.rules == rules
