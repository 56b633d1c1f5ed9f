"""The declared severity agrees with the published table, where one can grade."""

from typing import Any

import pytest

from builder.check.checks.declared_severity import check
from tests.check.small_course import evidence
from tests.judge.small import case


@pytest.mark.parametrize(
    ("visit", "more"),
    [
        ({}, {}),
        ({"severity": "moderate"}, {"severity": "mild"}),
        ({}, {"severity": "moderate"}),
        ({"since_injury": "30 h", "severity": "mild"}, {}),
        ({"severity": "mild"}, {"injury": "soreness"}),
    ],
)
def test_agreement_and_silence_are_silent(visit: dict[str, Any], more: dict[str, Any]) -> None:
    """Nothing declared, the graded one, and whatever no table can grade."""
    assert list(check(evidence(case(visit, **more)))) == []


@pytest.mark.parametrize(
    ("visit", "more", "path"),
    [
        ({"severity": "mild"}, {}, ("visits", 0, "severity")),
        ({"severity": "mild"}, {"severity": "moderate"}, ("visits", 0, "severity")),
        ({}, {"severity": "mild"}, ("severity",)),
    ],
)
def test_another_grade_is_told(
    visit: dict[str, Any], more: dict[str, Any], path: tuple[str | int, ...]
) -> None:
    """Where it was declared, what the table gives, and from what measure."""
    (found,) = check(evidence(case(visit, **more)))
    assert (found.file, found.path) == ("cases/bruise.yml", path)
    assert found.message == (
        "Severity is declared as mild, but the table gives moderate. "
        "Knee bend, taken 12 to 24 h after the injury: moderate."
    )
    assert found.remedy == "Write `severity: moderate`, or correct the measure."
    assert found.rules == ("table.thigh",)
