"""Words of a text: in small letters, without marks, and cut to what two forms of one word share."""

from __future__ import annotations

import re
from collections.abc import Iterable

_WORD = re.compile(r"[^\W_]+(?:['’][^\W_]+)*")
_SENTENCE = re.compile(r"[^.!?]+[.!?]*")
_STRONG = re.compile(r"\*\*.+?\*\*|__.+?__")
_ENDINGS = (
    *(
        "ations",
        "ation",
        "nesses",
        "ingly",
        "atic",
        "ness",
        "ings",
        "ical",
        "ment",
        "ing",
        "ers",
        "ies",
        "ied",
    ),
    *("ed", "er", "en", "es", "ic", "al", "ly", "s", "e", "y"),
)
_LEAST_STEM = 3


def words_of(text: str) -> list[str]:
    """The words of a text in small letters, numbers among them."""
    return _WORD.findall(text.lower())


def sentences_of(text: str) -> list[str]:
    """The sentences of a text, each with the mark that ends it."""
    return [part.strip() for part in _SENTENCE.findall(text) if part.strip()]


def without_emphasis(text: str) -> str:
    """The text without what stands in bold or in capitals."""
    return " ".join(part for part in _STRONG.sub(" ", text).split() if len(part) < 2 or not part.isupper())  # noqa: PLR2004


def stem_of(word: str) -> str:
    """What forms of one word share: alike for `lymph` and `lymphatic`, not for `swelling` and `swollen`."""
    for _ in range(2):
        cut = next(
            (one for one in _ENDINGS if word.endswith(one) and len(word) - len(one) >= _LEAST_STEM), ""
        )
        word = word.removesuffix(cut)
    return word


def holds(text: str, phrases: Iterable[str]) -> list[str]:
    """The phrases that stand in a text as whole words."""
    said = f" {' '.join(words_of(text))} "
    return [phrase for phrase in phrases if f" {phrase} " in said]


def without(text: str, phrases: Iterable[str]) -> str:
    """The words of a text without these phrases."""
    said = f" {' '.join(words_of(text))} "
    for phrase in phrases:
        said = said.replace(f" {phrase} ", " ")
    return said.strip()
