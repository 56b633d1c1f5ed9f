"""The agenda of a day has no stretch that belongs to nothing."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby, pairwise

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "warning"
WHY = "A reviewer adds up the timed agenda. Minutes that belong to nothing make the sum come out wrong."
BAD = Example(
    "course.yml",
    """
    agenda:
      - {day: 1, start: 09:00, end: 10:00, title: Cold, kind: lecture, objectives: [choose]}
      - {day: 1, start: 10:15, end: 11:00, title: Pads and wraps, kind: hands_on, objectives: [choose]}
    """,
)
GOOD = Example(
    "course.yml",
    """
    agenda:
      - {day: 1, start: 09:00, end: 10:00, title: Cold, kind: lecture, objectives: [choose]}
      - {day: 1, start: 10:00, end: 10:15, title: Break, kind: break}
      - {day: 1, start: 10:15, end: 11:00, title: Pads and wraps, kind: hands_on, objectives: [choose]}
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Time between two items of one day in which nothing is planned, not even a break."""
    agenda = sorted(enumerate(evidence.course.file.agenda), key=lambda one: (one[1].day, one[1].start))
    for _, day in groupby(agenda, key=lambda one: one[1].day):
        items = list(day)
        ends = [max(item.end for _, item in items[: at + 1]) for at in range(len(items))]
        for end, ((_, before), (index, item)) in zip(ends, pairwise(items), strict=False):
            if end < item.start:
                yield Finding(
                    "course.yml",
                    ("agenda", index, "start"),
                    f"Nothing is planned from {end:%H:%M}, after `{before.title}`, to {item.start:%H:%M}.",
                    "Move one of them, or write the break down as `kind: break`.",
                )
