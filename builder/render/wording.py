"""Interface words with their blanks filled; doses and spans of time as they read."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import Decimal

from builder.fault import Fault
from builder.model.fact import Fact, plain
from builder.model.words import said

Say = Callable[..., str]
IN_HOURS, IN_DAYS = 72, 60 * 24


def speaker(words: Mapping[str, str]) -> Say:
    """A function that says an interface word by its id; `{name}` in the word is filled by name."""

    def say(key: str, **blanks: object) -> str:
        if key not in words:
            raise Fault(f"The interface word `{key}` is missing.", "Give it in content/words/en.yml.")
        return said(words, key, **blanks)

    return say


def chip(name: str, fact: Fact | None, value: str | Decimal) -> str:
    """A written attribute, short enough for a chip: its value's own words, else after its label."""
    if fact is None:
        return f"{name.replace('_', ' ')} {value if isinstance(value, str) else plain(value)}"
    return fact.chip(value)


def span(hours: Decimal, say: Say) -> str:
    """Hours as a span of time: hours up to three days, days up to sixty, then weeks."""
    if hours <= IN_HOURS:
        return say("span_hours", n=plain(hours))
    if hours <= IN_DAYS:
        return say("span_days", n=plain((hours / 24).quantize(Decimal(1))))
    return say("span_weeks", n=plain((hours / 168).quantize(Decimal(1))))
