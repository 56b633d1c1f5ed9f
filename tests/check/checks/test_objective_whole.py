"""An objective has its condition and its measure."""

import pytest

from builder.check.checks.objective_whole import check
from tests.check.small_course import evidence


def told(text: str, language: str = "en") -> list[str]:
    """What is said of one objective."""
    found = check(evidence(objectives=[{"id": "one", "text": text}], language=language))
    return [one.message for one in found]


@pytest.mark.parametrize(
    ("text", "lacks"),
    [
        ("Choose a treatment.", "condition and no measure of how well"),
        ("From a written case, choose a treatment.", "measure of how well"),
        ("Choose at least two treatments.", "condition"),
    ],
)
def test_what_is_missing_is_told(text: str, lacks: str) -> None:
    """One part or both, in one line."""
    assert told(text) == [f"This objective names no {lacks}."]


@pytest.mark.parametrize(
    "text",
    [
        "Given a written case, choose a treatment without an unsafe choice.",
        "On a practice client, wrap a thigh within 2 minutes.",
    ],
)
def test_a_whole_objective_is_silent(text: str) -> None:
    """Condition and measure stand in any order."""
    assert told(text) == []


def test_another_language_is_left_alone() -> None:
    """The words are English."""
    assert told("W\u00e4hle.", language="de") == []
