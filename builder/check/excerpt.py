"""The source line of a thing to fix with a caret under it, cut to the width of a terminal."""

from __future__ import annotations

import unicodedata
from collections.abc import Sequence

from builder.place import Place

_CUT = "…"
_REPLACED = "\ufffd"


def printable(text: str) -> str:
    """The text with everything replaced that a terminal could take for an order."""
    if text.isprintable():
        return text
    return "".join(_shown(letter) for letter in text)


def excerpt(place: Place, lines: Sequence[str], width: int) -> list[str]:
    """The line of a place and a line of carets below it; nothing where the source is not known."""
    if not 0 < place.line <= len(lines) or not lines[place.line - 1].strip():
        return []
    number = str(place.line)
    line = lines[place.line - 1]
    start = min(place.column - 1, len(line))
    end = place.end_column - 1 if place.end_line == place.line else len(line)
    text, before, under = _window(line, start, max(end, start), width - len(number) - 5)
    gutter = " " * len(number)
    return [f"  {number} | {text}", f"  {gutter} | {' ' * before}{'^' * under}"]


def _shown(letter: str) -> str:
    if letter.isprintable():
        return letter
    return " " if letter in "\t\n" or unicodedata.category(letter) == "Zs" else _REPLACED


def _width(text: str) -> int:
    return len(text) if text.isascii() else sum(_letter_width(letter) for letter in text)


def _letter_width(letter: str) -> int:
    if unicodedata.category(letter) in ("Mn", "Me"):
        return 0
    return 2 if unicodedata.east_asian_width(letter) in ("W", "F") else 1


def _window(line: str, start: int, end: int, room: int) -> tuple[str, int, int]:
    """What is shown of a line, the columns before the caret, and how many carets."""
    skipped = max(0, start - 4 * room)
    line = printable(line[skipped : start + 4 * room])
    start, end = start - skipped, min(end, start + 4 * room) - skipped
    cut_before, cut_after = "", ""
    if _width(line) > room:
        first = start
        while first > 0 and _width(line[first - 1 : start]) <= room // 3:
            first -= 1
        cut_before = _CUT if first or skipped else ""
        last = first
        while last < len(line) and _width(line[first : last + 1]) <= room - len(cut_before) - 1:
            last += 1
        cut_after = _CUT if last < len(line) else ""
        line, start, end = line[first:last], start - first, min(end, last) - first
    before = len(cut_before) + _width(line[:start])
    under = min(max(_width(line[start:end]), 1), max(room - before, 1))
    return f"{cut_before}{line}{cut_after}".rstrip(), before, under
