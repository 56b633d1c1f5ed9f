"""Hours: counted minutes of an agenda in a board's own unit, and study time by formula."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, time
from decimal import Decimal
from fractions import Fraction
from itertools import groupby
from typing import Literal, TypeVar
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from builder.fault import Fault
from builder.model.board import HourRules
from builder.model.course import AgendaItem

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


@dataclass(frozen=True)
class DayHours:
    """One day by one board: minutes planned, minutes counted, breaks among them, and its hours, exact."""

    day: int
    planned: int
    hands_on: int
    counted: int
    breaks: int
    clock: int
    hours: Fraction
    held: Literal["", "clock", "day"] = ""


@dataclass(frozen=True)
class BoardHours:
    """An agenda in a board's unit: day by day, exact, and as it is printed."""

    days: tuple[DayHours, ...]
    exact: Fraction
    amount: Fraction

    @property
    def minutes(self) -> int:
        """The minutes that count."""
        return sum(day.counted for day in self.days)

    @property
    def hands_on(self) -> Fraction:
        """The share of hands-on work in the taught minutes that count."""
        taught = sum(day.counted - day.breaks for day in self.days)
        return Fraction(sum(day.hands_on for day in self.days), taught) if taught else Fraction(0)


def board_hours(agenda: Sequence[AgendaItem], board: HourRules) -> BoardHours:
    """The hours of an agenda in a board's unit; no minute counts twice, none that it does not name."""
    by_day = groupby(sorted(agenda, key=lambda item: item.day), key=lambda item: item.day)
    days = tuple(_day(number, list(items), board) for number, items in by_day)
    exact = sum((day.hours for day in days), Fraction(0)) / board.hours_in_unit
    return BoardHours(days, exact, rounded(exact, board))


def rounded(exact: Fraction, board: HourRules) -> Fraction:
    """An amount on a board's step, a half upwards where the nearest is taken; nothing under its least."""
    step = Fraction(board.step)
    steps = exact / step + (Fraction(1, 2) if board.rounded == "nearest" else 0)
    amount = steps.numerator // steps.denominator * step
    return amount if amount >= Fraction(board.least) else Fraction(0)


def _day(number: int, items: Sequence[AgendaItem], board: HourRules) -> DayHours:
    taught = _spans(item for item in items if item.kind in board.counted and item.kind != "break")
    pauses = _spans(item for item in items if item.kind == "break")
    clock = _length(merged([*taught, *pauses]))
    breaks = _counted_breaks(_length(taught), clock - _length(taught), board)
    counted = _length(taught) + breaks
    hours, held = _held(Fraction(counted, board.minutes_in_hour), clock, board)
    hands = _spans(item for item in items if item.kind == "hands_on" and item.kind in board.counted)
    planned = _length(_spans(items))
    return DayHours(number, planned, _length(hands), counted, breaks, clock, hours, held)


def _counted_breaks(taught: int, breaks: int, board: HourRules) -> int:
    """The minutes of break that count: with an allowance, no more than belong to the minutes taught."""
    if "break" not in board.counted:
        return 0
    allowance = board.break_minutes_in_hour
    if not allowance:
        return breaks
    return min(breaks, taught * allowance // (board.minutes_in_hour - allowance))


def _held(hours: Fraction, clock: int, board: HourRules) -> tuple[Fraction, Literal["", "clock", "day"]]:
    """The hours of a day under the board's limits, and which of them held it."""
    held: Literal["", "clock", "day"] = ""
    if board.clock_hours_at_most and hours > Fraction(clock, 60):
        hours, held = Fraction(clock, 60), "clock"
    if board.most_in_day is not None and hours > Fraction(board.most_in_day):
        hours, held = Fraction(board.most_in_day), "day"
    return hours, held


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


def _spans(items: Iterable[AgendaItem]) -> list[tuple[int, int]]:
    return merged((_minute(item.start), _minute(item.end)) for item in items)


def _length(spans: Iterable[tuple[int, int]]) -> int:
    return sum(end - start for start, end in spans)


def _minute(at: time) -> int:
    return at.hour * 60 + at.minute
