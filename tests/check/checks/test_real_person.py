"""A case tells of nobody who could be found."""

import pytest

from builder.check.checks.real_person import check
from tests.check.small_course import evidence
from tests.judge.small import case


def told(text: str) -> list[tuple[object, str]]:
    """Where and what is said of a case with this story."""
    made = case({"since_injury": "18 h", "story": text})
    return [(one.path, one.message) for one in check(evidence(made))]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("It was Ms Vexley who fell.", "a name: `Ms Vexley`"),
        ("I am called Orlanda Vexley at work.", "a name: `Orlanda Vexley`"),
        ("It was on 3 May 2025.", "a day: `3 May 2025`"),
        ("It was on 2025-05-03.", "a day: `2025-05-03`"),
        ("Write to o.vexley@circus.example.", "an address: `o.vexley@circus.example`"),
        ("Call +49 151 000 111 22.", "a telephone number: `+49 151 000 111 22`"),
    ],
)
def test_what_a_client_is_found_by_is_told(text: str, said: str) -> None:
    """Once a text, with what was seen."""
    assert told(text) == [(("visits", 0, "story"), f"This looks like {said}.")]


@pytest.mark.parametrize(
    "text",
    [
        "The ring master sent me. Must I undress?",
        "It hurt on Monday and 10 minutes later it was gone.",
        "Ten repeats, 3 times, at 20 of 40.",
    ],
)
def test_an_ordinary_story_is_silent(text: str) -> None:
    """Beginnings of sentences, days of the week and small numbers find nobody."""
    assert told(text) == []
