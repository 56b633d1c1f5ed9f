"""A word of the stem that leads to the right option."""

import pytest

from builder.check.checks import repeated_word
from tests.check.wording.written import told


@pytest.mark.parametrize(
    ("stem", "right", "wrong", "word"),
    [
        ("Which nerve runs in the radial groove?", "Radial nerve", ["Ulnar nerve", "Sural nerve"], "radial"),
        ("What does lymph work help?", "The lymphatic flow", ["Sleep", "The pulse"], "lymphatic"),
        ("Which two are swollen?", ["A swollen calf", "A cut"], ["An ear", "A nose"], "swollen"),
    ],
)
def test_the_word_is_named_as_the_option_has_it(
    stem: str, right: str | list[str], wrong: list[str], word: str
) -> None:
    """Forms of one word count; a word of wrong options too does not."""
    (said,) = told(repeated_word, stem, right, *wrong)
    assert said == f"“{word}” stands in the question and in the right option alone."


@pytest.mark.parametrize(
    ("stem", "right", "wrong"),
    [
        ("Which nerve is it?", "Radial nerve", ["Ulnar nerve", "Sural nerve"]),
        ("Which bone is it?", "Radius", ["Bone of the heel"]),
        ("What should you do first?", "Do what comes first", ["Wait"]),
        ("Which leg?", "The left leg", ["An arm"]),
        ("After 2026 what?", "2026 more", ["Nothing"]),
    ],
)
def test_what_tells_nothing_is_silent(stem: str, right: str, wrong: list[str]) -> None:
    """Plain, short and shared words, numbers, and words of a wrong option."""
    assert told(repeated_word, stem, right, *wrong) == []
