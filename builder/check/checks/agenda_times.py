"""The agenda's items must follow each other without overlap."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.course import AgendaItem
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = "Contact hours are counted from the agenda, and no board counts the same minutes twice."
BAD = Example(
    "course.yml",
    """
    agenda:
      - {day: 1, start: 09:00, end: 10:30, title: Cold, kind: lecture, objectives: [choose]}
      - {day: 1, start: 10:00, end: 11:00, title: Pads and wraps, kind: hands_on, objectives: [choose]}
    """,
)
GOOD = Example(
    "course.yml",
    """
    agenda:
      - {day: 1, start: 09:00, end: 10:00, title: Cold, kind: lecture, objectives: [choose]}
      - {day: 1, start: 10:00, end: 11:00, title: Pads and wraps, kind: hands_on, objectives: [choose]}
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Items that end before they begin, or begin before an earlier one of that day has ended."""
    agenda = sorted(enumerate(evidence.course.file.agenda), key=lambda one: (one[1].day, one[1].start))
    longest: dict[int, AgendaItem] = {}
    for index, item in agenda:
        if item.end <= item.start:
            message = f"`{item.title}` ends at {item.end:%H:%M}, before it begins."
            yield Finding("course.yml", ("agenda", index), message, "Correct the times.")
        before = longest.get(item.day)
        if before and item.start < before.end:
            yield Finding(
                "course.yml",
                ("agenda", index, "start"),
                f"`{item.title}` begins before `{before.title}` has ended at {before.end:%H:%M}.",
                "Move one of them: overlapping minutes cannot be counted twice.",
            )
        if before is None or item.end > before.end:
            longest[item.day] = item
