"""The table of rules that stop a session against cards for the hands, as the solver proves it."""

from __future__ import annotations

from collections.abc import Iterator
from string import ascii_letters
from textwrap import wrap
from typing import Any

from builder.fault import Fault
from builder.flow.opened import Opened
from builder.judge.judge import Judge
from builder.judge.prove import flag_table
from builder.model.library import Content

WIDTH = 80
STOPPED, OPEN = "x", "?"
HEAD = (
    "Every rule that stops a session the same day or at once, against every card for the hands. "
    "An x is proven: no client whom the rule stops has the card left, at any site and dose; a "
    "question mark means that somebody has."
)


def explain_flags(opened: Opened) -> tuple[list[str], dict[str, Any]]:
    """The table in lines for a terminal, and as data."""
    if opened.course is None:
        raise Fault("The course cannot be put together.", "Run check and mend what it names.")
    content = opened.course.content
    table = flag_table(content, Judge(content).space)
    left = sum(not stopped for row in table.values() for stopped in row.values())
    data = {"format": "caseloom/flags/1", "open": left, "flags": table}
    return list(_lines(content, table, left)), data


def _lines(content: Content, table: dict[str, dict[str, bool]], left: int) -> Iterator[str]:
    yield from wrap(HEAD, WIDTH)
    yield ""
    cards = list(next(iter(table.values()), {}))
    letters = ascii_letters[: len(cards)]
    yield from (
        f"  {letter}  {content.cards[card].name}" for letter, card in zip(letters, cards, strict=True)
    )
    yield ""
    wide = max((len(rule) for rule in table), default=0)
    yield f"  {'':<{wide}}  {' '.join(letters)}"
    for rule, row in table.items():
        yield f"  {rule:<{wide}}  {' '.join(STOPPED if row[card] else OPEN for card in cards)}"
    yield ""
    yield f"{len(table)} rules, {len(cards)} cards, {left} left open."
