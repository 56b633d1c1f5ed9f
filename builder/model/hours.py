"""Hours: counted minutes of an agenda in a board's own unit, and study time by formula."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import datetime, time
from decimal import Decimal
from fractions import Fraction
from itertools import groupby
from typing import TypeVar
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from builder.fault import Fault
from builder.model.course import AgendaItem, BoardRules

Point = TypeVar("Point", int, datetime)


def merged(spans: Iterable[tuple[Point, Point]]) -> list[tuple[Point, Point]]:
    """Spans in order; those that touch or overlap are made one, those that end before they start left out."""
    whole: list[tuple[Point, Point]] = []
    for start, end in sorted(span for span in spans if span[0] < span[1]):
        if whole and start <= whole[-1][1]:
            whole[-1] = (whole[-1][0], max(whole[-1][1], end))
        else:
            whole.append((start, end))
    return whole


def counted_minutes(agenda: Sequence[AgendaItem], board: BoardRules) -> int:
    """The minutes of the agenda that a board counts; where items overlap, no minute counts twice."""
    days = groupby(sorted(agenda, key=lambda item: item.day), key=lambda item: item.day)
    return sum(_minutes_of_day([item for item in items if item.kind in board.counted]) for _, items in days)


def board_hours(agenda: Sequence[AgendaItem], board: BoardRules) -> Fraction:
    """The hours of an agenda in a board's unit, exact."""
    return Fraction(counted_minutes(agenda, board), board.minutes_in_hour)


def study_minutes(words: int, questions: int, difficulty: Decimal) -> Decimal:
    """Minutes to study a text and sit its test, never below 0 (Mergener, Am J Pharm Educ 1991;55:263-6)."""
    inner = Decimal("-22.3") + Decimal("0.00209") * words + Decimal("2.78") * questions
    return max(Decimal(0), Decimal("0.9") * (inner + Decimal("15.5") * difficulty))


def zone_of(name: str) -> ZoneInfo:
    """The time zone of a name such as America/New_York; a Fault when there is none."""
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError) as error:
        raise Fault(f"There is no time zone `{name}`.", "Write one such as America/New_York.") from error


def _minutes_of_day(items: Iterable[AgendaItem]) -> int:
    spans = ((_minute(item.start), _minute(item.end)) for item in items)
    return sum(end - start for start, end in merged(spans))


def _minute(at: time) -> int:
    return at.hour * 60 + at.minute
