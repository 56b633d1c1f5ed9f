"""A case that is tested may be shown nowhere else: not in practice, in no lesson and on no station."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.lesson import lesson_tags
from builder.model.library import Course

LEVEL: Level = "error"
WHY = "Who has practised a case knows its answers. A case of a test is therefore shown nowhere else."
BAD = Example(
    "stations/cooling.yml",
    """
    case: thigh
    """,
)
GOOD = Example(
    "stations/cooling.yml",
    """
    case: fence
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every place that shows a case out of the pool of a test."""
    course = evidence.course
    tested = {name: test.title for test in course.file.tests for name in test.cases}
    yield from _in_practice(course, tested)
    yield from _in_lessons(course, tested)
    for station in course.stations.values():
        if station.case in tested:
            yield _finding(f"stations/{station.id}.yml", ("case",), station.case, tested)


def _in_practice(course: Course, tested: dict[str, str]) -> Iterator[Finding]:
    for index, one in enumerate(course.file.practice):
        for number, case in enumerate(one.cases):
            if case in tested:
                yield _finding("course.yml", ("practice", index, "cases", number), case, tested)


def _in_lessons(course: Course, tested: dict[str, str]) -> Iterator[Finding]:
    for stem, text in course.lessons.items():
        for tag in lesson_tags(text):
            if tag.kind in ("case", "figure") and tag.name in tested:
                yield _finding(f"lessons/{stem}.md", (), tag.name, tested, tag.line)


def _finding(
    file: str, path: tuple[str | int, ...], case: str, tested: dict[str, str], line: int = 0
) -> Finding:
    return Finding(
        file,
        path,
        f"The case `{case}` is in the pool of the test `{tested[case]}` and is shown here.",
        "Use another case here, or take it out of the pool.",
        line=line,
    )
