"""What a word that nobody knows may have been meant to be."""

from __future__ import annotations

from collections.abc import Collection
from difflib import get_close_matches

_SHOWN = 8
_LONGEST = 60


def nearest(word: str, known: Collection[str]) -> str | None:
    """The known word most like this one, if one is like it at all."""
    found = get_close_matches(word[:_LONGEST].lower(), sorted(known), n=1, cutoff=0.6)
    return found[0] if found else None


def suggest(word: str, known: Collection[str], otherwise: str = "Remove it.") -> str:
    """A remedy for an unknown word: the nearest known one, or a look at what is known."""
    if near := nearest(word, known):
        return f"Did you mean `{near}`?"
    if not known:
        return otherwise
    once = sorted(set(known))
    shown = ", ".join(f"`{one}`" for one in once[:_SHOWN])
    more = f" and {len(once) - _SHOWN} more" if len(once) > _SHOWN else ""
    return f"Known here: {shown}{more}."


def quoted(value: object) -> str:
    """A written value as it may stand in a message, never long."""
    match value:
        case None:
            return "nothing"
        case bool():
            return f"`{str(value).lower()}`"
        case list():
            return "a list"
        case dict():
            return "a block"
        case _:
            text = str(value)
            return f"`{text}`" if len(text) <= _LONGEST else f"`{text[: _LONGEST - 1]}…`"
