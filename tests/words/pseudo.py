"""A made-up language for tests: accents, words four tenths longer, and brackets around every text."""

import json
from collections.abc import Mapping
from string import Formatter

from builder.disk import shipped
from builder.model.words import ONE
from builder.read.words import read_words

LANGUAGE = "en-XA"  # BCP 47: the region XA is kept free for private use
OPEN, SHUT = "⟦", "⟧"
PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
ACCENTED = "áƀčďéƒĝĥíĵķĺḿñöþɋŕšţüṽŵẋýžÁƁČĎÉƑĜĤÍĴĶĹṀÑÖÞɊŔŠŢÜṼŴẊÝŽ"
_ACCENTS = str.maketrans(PLAIN, ACCENTED)
LONGER = 1.4


def stretched(text: str) -> str:
    """The text as this language has it; blanks stay, spaces at its ends too."""
    inner = text.strip()
    if not inner:
        return text
    before, _, after = text.partition(inner)
    return f"{before}{OPEN}{''.join(map(_part, Formatter().parse(inner)))}{SHUT}{after}"


def words_file() -> str:
    """The words of the tool in this language, as a file of a course."""
    lines = ["format: 1", *(f"{key}: {_written(text)}" for key, text in _texts().items())]
    return "\n".join([*lines, ""])


def _texts() -> Mapping[str, str | dict[str, str]]:
    flat = {key: stretched(text) for key, text in (read_words(shipped("content")).texts or {}).items()}
    return {
        key: {"one": flat[key + ONE], "other": text} if key + ONE in flat else text
        for key, text in flat.items()
        if not key.endswith(ONE)
    }


def _written(text: str | dict[str, str]) -> str:
    return json.dumps(text, ensure_ascii=False)


def _part(part: tuple[str, str | None, str | None, str | None]) -> str:
    """What stands before a blank, longer, and the blank."""
    said, blank = part[0], part[1]
    goal, longer = LONGER * len(said), ""
    left = goal - len(said)
    for letter in said:
        twice = letter in "aeiou" and left > 0
        longer += letter * (2 if twice else 1)
        left -= twice
    longer = longer.translate(_ACCENTS).replace("{", "{{").replace("}", "}}")
    return longer + (f"{{{blank}}}" if blank is not None else "")
