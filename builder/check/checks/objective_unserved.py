"""Every objective is taught somewhere, and proven by a test or a station."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.library import Course

LEVEL: Level = "warning"
WHY = (
    "What is promised and never taught, or taught and never asked for, is the first thing a reviewer of the "
    "course looks for."
)
BAD = Example(
    "course.yml",
    """
    objectives:
      - {id: choose, text: "Given a written case, choose the treatment without an unsafe choice."}
      - {id: wrap, text: "On a practice client, wrap a thigh within two minutes."}
    """,
)
GOOD = Example(
    "course.yml",
    """
    objectives:
      - {id: choose, text: "Given a written case, choose the treatment without an unsafe choice."}
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Objectives that no lesson and no part of the agenda teaches, or that nothing proves."""
    course = evidence.course
    taught, proven = _taught(course), _proven(course)
    for index, one in enumerate(course.file.objectives):
        lacks = [
            said
            for said, names in (
                ("taught by no lesson and no part of the agenda", taught),
                ("asked for by no test and no station", proven),
            )
            if one.id not in names
        ]
        if lacks:
            yield Finding(
                "course.yml",
                ("objectives", index, "id"),
                f"The objective `{one.id}` is {' and '.join(lacks)}.",
                "Name it where it is taught and in a row of a test's plan or a station, or leave it out.",
            )


def _taught(course: Course) -> set[str]:
    """What lessons and agenda name; a course without an agenda is taught by its lessons alone."""
    lessons = {name for one in course.file.lessons for name in one.objectives}
    return lessons | {name for one in course.file.agenda for name in one.objectives}


def _proven(course: Course) -> set[str]:
    planned = {row.objective for test in course.file.tests for row in test.plan}
    by_case = {
        name
        for one in course.stations.values()
        for name in one.objectives or (course.cases[one.case].objectives if one.case in course.cases else ())
    }
    return planned | by_case
