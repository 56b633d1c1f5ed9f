"""The agenda's items must follow each other without overlap."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.course import AgendaItem

LEVEL: Level = "error"


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
