"""Whether a stem asks for one thing or several, and which options read so."""

from __future__ import annotations

import re

from builder.check.wording.words import sentences_of, words_of

_ASKS_SEVERAL = re.compile(
    r"\b(?:are|were)(?: the)?\W*$"
    r"|^which [a-z]+[^sui\W]s (?!(?:is|was|does|has|a|an|the|to|this|that|best|more|most|in|on|for|with)\b)",
    re.IGNORECASE,
)
_ASKS_ONE = re.compile(r"^(?:which|what)\b.*\bis (?:an?|one)\b", re.IGNORECASE)
_AFTER_HEAD = frozenset(
    {"of", "in", "on", "at", "for", "with", "near", "to", "that", "which", "from", "by", "under"}
)


def several_asked(stem: str) -> bool | None:
    """True where the last sentence asks for several, False where for one; None where it does not tell."""
    last = sentences_of(stem)[-1]
    if _ASKS_SEVERAL.search(last):
        return True
    return False if _ASKS_ONE.search(last) else None


def reads_several(option: str) -> bool:
    """Whether an option names several things: two joined, or a head word with an s."""
    words = words_of(option)
    if "and" in words or "," in option:
        return True
    end = next((place for place, word in enumerate(words) if word in _AFTER_HEAD), len(words))
    head = words[end - 1] if end else ""
    return head.endswith("s") and not head.endswith(("ss", "us", "is"))
