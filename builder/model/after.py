"""After the course: when to come back to it, with what, and what stands in a calendar."""

from __future__ import annotations

import calendar
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

IntervalId = Literal["day", "week", "month", "quarter"]
DECEMBER = 12


@dataclass(frozen=True)
class Interval:
    """How long after the last day: so many days and calendar months."""

    id: IntervalId
    days: int = 0
    months: int = 0

    def after(self, last: date) -> date:
        """The day it falls on; the last of the month where the month has no such day."""
        month = last.month - 1 + self.months
        year, month = last.year + month // DECEMBER, month % DECEMBER + 1
        day = min(last.day, calendar.monthrange(year, month)[1])
        return date(year, month, day) + timedelta(days=self.days)


# One day, one week, one month, three months: common practice of spaced practice, no source for these four.
INTERVALS = (
    Interval("day", 1),
    Interval("week", 7),
    Interval("month", months=1),
    Interval("quarter", months=3),
)


@dataclass(frozen=True)
class SpacedSet:
    """What to come back to after an interval: practice cases and practice questions, by their ids."""

    interval: Interval
    cases: tuple[str, ...]
    questions: tuple[str, ...]


@dataclass(frozen=True)
class Reminder:
    """One day in a calendar; `uid` is the same whenever the same day is written for the same course."""

    uid: str
    day: date
    title: str
    text: str


def uid_of(key: str, last: date, interval: Interval) -> str:
    """The name of one event: the same for the same course, last day and interval, whoever writes it."""
    return f"{key}-{last:%Y%m%d}-{interval.id}@caseloom"
