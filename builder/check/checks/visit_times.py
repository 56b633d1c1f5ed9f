"""The visits of a case follow each other in time, and an injury that happened again stays happened."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.case import Case, Visit
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "Phases are counted from the latest injury. Visits out of order, or a second injury that is "
    "forgotten, would count from the wrong day."
)
BAD = Example(
    "cases/fair.yml",
    """
    title: Second evening
    since_injury: 20 h
    """,
    at="visits/2",
)
GOOD = Example(
    "cases/fair.yml",
    """
    title: Second evening
    since_injury: 36 h
    """,
    at="visits/2",
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Visits out of order, second injuries before the first, and second injuries that are forgotten."""
    for case in evidence.course.cases.values():
        for index, visit in enumerate(case.visits):
            if visit.since_reinjury is not None and visit.since_reinjury > visit.since_injury:
                message = "The second injury lies before the first."
                yield _finding(case, index, "since_reinjury", message, "Correct one of the two times.")
        for index, (before, visit) in enumerate(pairwise(case.visits), start=1):
            yield from _after(case, index, before, visit)


def _after(case: Case, index: int, before: Visit, visit: Visit) -> Iterator[Finding]:
    if visit.since_injury < before.since_injury:
        message = "This visit lies before the one above it."
        yield _finding(case, index, "since_injury", message, "Put the visits in the order of their days.")
    if visit.since_reinjury is None and before.since_reinjury is not None:
        message = "The visit before knows of a second injury, and this one counts from the first."
        yield _finding(
            case,
            index,
            "since_injury",
            message,
            "Add `since_reinjury`: the clock runs from the latest injury.",
        )


def _finding(case: Case, index: int, key: str, message: str, remedy: str) -> Finding:
    return Finding(case_file(case), ("visits", index, key), message, remedy)
