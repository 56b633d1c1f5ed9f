"""Words, sentences and forms of a word."""

import pytest

from builder.check.wording.words import (
    holds,
    sentences_of,
    stem_of,
    without,
    without_emphasis,
    words_of,
)


def test_words_are_small_and_without_marks() -> None:
    """Numbers are words; an apostrophe stays inside."""
    assert words_of("Don't wrap it: 20 minutes, **twice**!") == [
        "don't",
        "wrap",
        "it",
        "20",
        "minutes",
        "twice",
    ]


def test_sentences_keep_the_mark_that_ends_them() -> None:
    """A question is known by its mark; what follows no mark is a sentence too."""
    assert sentences_of("He fell. What now? Choose") == ["He fell.", "What now?", "Choose"]


def test_what_is_emphasised_is_taken_out() -> None:
    """Bold of both sorts and capitals; a single capital letter is none."""
    assert without_emphasis("Which is NOT **never** so, I ask") == "Which is so, I ask"


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("lymph", "lymphatic"),
        ("sore", "soreness"),
        ("broaden", "broadening"),
        ("creaks", "creaking"),
        ("remove", "removes"),
        ("swells", "swelling"),
    ],
)
def test_forms_of_one_word_share_a_stem(one: str, other: str) -> None:
    """What differs only in its ending is the same word."""
    assert stem_of(one) == stem_of(other)


@pytest.mark.parametrize(("one", "other"), [("heat", "heal"), ("hand", "hard"), ("ulna", "ulnaris")])
def test_other_words_do_not(one: str, other: str) -> None:
    """A word that only begins alike is another one."""
    assert stem_of(one) != stem_of(other)


def test_phrases_are_whole_words() -> None:
    """A phrase inside a longer word is not there; one taken away leaves the rest."""
    assert holds("Kneel on all fours, always", ("all fours", "ways", "always")) == ["all fours", "always"]
    assert without("Kneel on all fours, always", ("all fours",)) == "kneel on always"
