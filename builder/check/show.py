"""Printers of what is to fix: for a terminal with the source line and a caret, and for programs."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from builder.check.excerpt import excerpt, printable
from builder.diagnostic import Diagnostic, Level, count_levels
from builder.place import Place, Places

_COLOURS: dict[Level, str] = {"error": "31;1", "warning": "33;1", "advice": "36;1"}
_COUNTED: dict[Level, tuple[str, str]] = {
    "error": ("error", "errors"),
    "warning": ("warning", "warnings"),
    "advice": ("piece of advice", "pieces of advice"),
}
MOST_NAMES = 8
_INDENT = "  "


def as_json(found: Sequence[Diagnostic]) -> dict[str, Any]:
    """What is to fix, in the shape `caseloom/check/1`."""
    return {
        "format": "caseloom/check/1",
        "counts": count_levels(list(found)),
        "to_fix": [_one_as_json(one) for one in found if not one.accepted],
        "accepted": [{**_one_as_json(one), "because": one.accepted.strip()} for one in found if one.accepted],
    }


def as_text(
    found: Sequence[Diagnostic], places: Mapping[str, Places], *, width: int = 80, colour: bool = False
) -> str:
    """What is to fix, as printed on a terminal; `places` holds the source lines by file."""
    left = [one for one in found if not one.accepted]
    blocks = ["\n".join(_one_as_lines(one, places, width, colour=colour)) for one in left]
    return "\n\n".join([*blocks, _summary(found)])


def _one_as_json(one: Diagnostic) -> dict[str, Any]:
    place = one.place
    return {
        "check": one.check,
        "level": one.level,
        "file": place.file,
        "line": place.line,
        "column": place.column,
        "end_line": place.end_line,
        "end_column": place.end_column,
        "path": list(one.path),
        "message": one.message,
        "remedy": one.remedy,
        "rules": list(one.rules),
        "related": [
            {
                "file": near.place.file,
                "line": near.place.line,
                "column": near.place.column,
                "message": near.message,
            }
            for near in one.related
        ],
    }


def _one_as_lines(
    one: Diagnostic, places: Mapping[str, Places], width: int, *, colour: bool
) -> Iterator[str]:
    yield f"{_where(one.place)}  {_painted(one.level, one.level, colour=colour)}  {one.check}"
    known = places.get(one.place.file)
    for shown in excerpt(one.place, known.lines if known else (), width):
        yield _painted(shown, one.level, colour=colour and set(shown) <= set(" |^"))
    yield from _wrapped(one.message, "", width)
    yield from _wrapped(one.remedy, "To mend: ", width)
    if one.rules:
        yield from _wrapped(_listed(one.rules), "Rules: ", width)
    for near in one.related:
        yield from _wrapped(near.message, f"See {_where(near.place)}: ", width)


def _listed(names: tuple[str, ...]) -> str:
    """The first names, and how many more there are; a program is given all of them."""
    more = len(names) - MOST_NAMES
    return ", ".join(names) if more <= 1 else f"{', '.join(names[:MOST_NAMES])} and {more} more"


def _where(place: Place) -> str:
    file = printable(place.file)
    return file if file.endswith("/") else f"{file}:{place.line}:{place.column}"


def _painted(text: str, level: Level, *, colour: bool) -> str:
    return f"\x1b[{_COLOURS[level]}m{text}\x1b[0m" if colour else text


def _wrapped(text: str, lead: str, width: int) -> list[str]:
    if not text:
        return []
    return textwrap.wrap(
        lead + printable(text),
        width,
        initial_indent=_INDENT,
        subsequent_indent=_INDENT,
        break_on_hyphens=False,
    )


def _summary(found: Sequence[Diagnostic]) -> str:
    accepted = sum(bool(one.accepted) for one in found)
    also = f" {accepted} accepted with a reason." if accepted else ""
    if len(found) == accepted:
        return f"Nothing to fix.{also}"
    counts = count_levels(list(found))
    parts = [f"{counts[level] or 'no'} {words[counts[level] != 1]}" for level, words in _COUNTED.items()]
    return f"To fix: {', '.join(parts).replace('no pieces of advice', 'no advice')}.{also}"
