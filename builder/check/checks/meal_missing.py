"""A long day has a meal in it."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import time
from itertools import groupby

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "warning"
WHY = (
    "A full day without a meal is not believed. Where the meal is taken all the same, its minutes were "
    "counted as taught."
)
LONG_DAY_MINUTES = 360  # own default: six hours
BAD = Example(
    "course.yml",
    """
    agenda:
      - {day: 1, start: 09:00, end: 12:00, title: Cold, kind: lecture, objectives: [choose]}
      - {day: 1, start: 12:00, end: 16:00, title: Pads and wraps, kind: hands_on, objectives: [choose]}
    """,
)
GOOD = Example(
    "course.yml",
    """
    agenda:
      - {day: 1, start: 09:00, end: 12:00, title: Cold, kind: lecture, objectives: [choose]}
      - {day: 1, start: 12:00, end: 13:00, title: Midday meal, kind: meal}
      - {day: 1, start: 13:00, end: 16:00, title: Pads and wraps, kind: hands_on, objectives: [choose]}
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Days of more than six hours from first to last item in which no meal is planned."""
    agenda = sorted(enumerate(evidence.course.file.agenda), key=lambda one: (one[1].day, one[1].start))
    for number, day in groupby(agenda, key=lambda one: one[1].day):
        items = list(day)
        length = _minute(max(item.end for _, item in items)) - _minute(items[0][1].start)
        if length > LONG_DAY_MINUTES and not any(item.kind == "meal" for _, item in items):
            yield Finding(
                "course.yml",
                ("agenda", items[0][0]),
                f"Day {number} lasts {length // 60} h {length % 60:02} min and has no meal.",
                "Plan a meal with `kind: meal`: it does not count, and everyone needs it.",
            )


def _minute(at: time) -> int:
    return at.hour * 60 + at.minute
