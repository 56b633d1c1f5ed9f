"""What an unquoted YAML scalar stands for: the few readings a person would expect, all else is text."""

from __future__ import annotations

import re
from decimal import Decimal

Scalar = str | int | Decimal | bool | None

_WORDS: dict[str, Scalar] = {"": None, "~": None, "null": None, "true": True, "false": False}
_INTEGER = re.compile(r"[-+]?(?:0|[1-9][0-9]*)")
_DECIMAL = re.compile(r"[-+]?(?:0|[1-9][0-9]*)\.[0-9]+")
_NUMBER_STARTS = frozenset("-+0123456789")
_LONGEST_NUMBER = 30


def meaning(plain: str) -> Scalar:
    """The value of an unquoted scalar; codes such as 007, spans, dates and `yes` stay text."""
    if plain in _WORDS:
        return _WORDS[plain]
    if plain[0] in _NUMBER_STARTS and len(plain) <= _LONGEST_NUMBER:
        if _INTEGER.fullmatch(plain):
            return int(plain)
        if _DECIMAL.fullmatch(plain):
            return Decimal(plain)
    return plain
