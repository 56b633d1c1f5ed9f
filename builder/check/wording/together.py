"""Options that stand for other options."""

from __future__ import annotations

import re

from builder.check.wording.words import words_of
from builder.model.wording import WordLists

_LETTERS = re.compile(
    r"(?:both )?[a-h1-8](?:(?:,|,? (?:and|or|nor|&)) [a-h1-8])+(?: only| alone)?", re.IGNORECASE
)
_WITHIN = 5


def takes_others(words: WordLists, option: str) -> bool:
    """Whether an option takes others together or leaves them all out: `all of these`, `a and c only`."""
    if _LETTERS.fullmatch(option.strip(" .")):
        return any(letter.isalpha() for letter in words_of(option) if len(letter) == 1)
    said = words_of(option)
    return (
        bool(said) and said[0] in words.together and not set(words.others).isdisjoint(said[1 : 1 + _WITHIN])
    )
