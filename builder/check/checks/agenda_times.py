"""The agenda's items must follow each other without overlap."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level

LEVEL: Level = "error"


def check(evidence: Evidence) -> Iterator[Finding]:
    """Items that end before they begin, or begin before the one above has ended."""
    agenda = evidence.course.file.agenda
    for index, item in enumerate(agenda):
        if item.end <= item.start:
            message = f"`{item.title}` ends at {item.end:%H:%M}, before it begins."
            yield Finding("course.yml", ("agenda", index), message, "Correct the times.")
    for index, (before, item) in enumerate(pairwise(agenda), start=1):
        if before.day == item.day and item.start < before.end:
            yield Finding(
                "course.yml",
                ("agenda", index, "start"),
                f"`{item.title}` begins before `{before.title}` has ended at {before.end:%H:%M}.",
                "Move one of them: overlapping minutes cannot be counted twice.",
            )
