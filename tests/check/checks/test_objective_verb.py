"""An objective names something that can be seen."""

import pytest

from builder.check.checks.objective_verb import check
from tests.check.small_course import evidence


def told(text: str, language: str = "en") -> list[str]:
    """What is said of one objective."""
    found = check(evidence(objectives=[{"id": "one", "text": text}], language=language))
    return [one.message for one in found]


@pytest.mark.parametrize(
    ("text", "verb"),
    [
        ("Understand the phases of healing.", "understand"),
        ("Given a case, know what to do.", "know"),
        ("Name the phase and appreciate why.", "appreciate"),
        ("Be familiar with cold.", "be familiar"),
    ],
)
def test_what_nobody_can_see_is_told(text: str, verb: str) -> None:
    """At the beginning, after a comma, and after `and`."""
    assert told(text) == [f"Nobody can see whether a participant does this: `{verb}`."]


@pytest.mark.parametrize(
    "text", ["Name the phase of healing.", "Explain what clients know of cold.", "Show a known wrap."]
)
def test_what_can_be_seen_is_silent(text: str) -> None:
    """The words may stand anywhere else in the text."""
    assert told(text) == []


def test_another_language_is_left_alone() -> None:
    """The list is English."""
    assert told("Understand", language="de") == []
