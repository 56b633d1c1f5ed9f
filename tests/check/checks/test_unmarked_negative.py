"""Questions turned round by a word that is easily missed."""

import pytest

from builder.check.checks import unmarked_negative
from tests.check.wording.written import told


@pytest.mark.parametrize(
    ("stem", "word"),
    [
        ("Which is not a sign?", "not"),
        ("All of these are signs except", "except"),
        ("Which matters least for the dose?", "least"),
        ("He fell. Which step does one never take?", "never"),
        ("Which card isn't open?", "isn't"),
    ],
)
def test_the_word_is_named(stem: str, word: str) -> None:
    """It stands in the sentence that asks."""
    assert told(unmarked_negative, stem, "One", "Two") == [
        f"The question is turned round by “{word}”, which is easily missed."
    ]


@pytest.mark.parametrize(
    "stem",
    [
        "Which is NOT a sign?",
        "Which is **not** a sign?",
        "She cannot stand. What now?",
        "What do you do when he does not answer?",
        "How long at least?",
        "Which card is open?",
    ],
)
def test_what_is_marked_or_only_told_is_silent(stem: str) -> None:
    """Emphasis, what happened before, a condition, and phrases that turn nothing."""
    assert told(unmarked_negative, stem, "One", "Two") == []
