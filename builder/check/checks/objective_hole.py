"""Every objective that is taught and proven has practice, time in the agenda and a reference, too."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.matrix import Hole, Served, matrix

LEVEL: Level = "advice"
WHY = (
    "Bodies that approve courses lay each objective beside its content, its time and its sources. An empty "
    "cell there is what they ask about."
)
_COURSE = """
lessons:
  - {file: cold.md, title: Cold, objectives: [choose]}
agenda:
  - {day: 1, start: 09:00, end: 10:00, title: Written test, kind: test%s}
"""
BAD = Example("course.yml", _COURSE % "")
GOOD = Example("course.yml", _COURSE % ", objectives: [choose]")

_LACKS: dict[Hole, str] = {
    "practice": "no practice case",
    "minutes": "no part of the agenda",
    "reference": "no reference",
}


def check(evidence: Evidence) -> Iterator[Finding]:
    """Empty cells of the matrix of objectives; references are owed once one objective has some."""
    sourced = any(one.references for one in evidence.course.file.objectives)
    for index, served in enumerate(matrix(evidence.course)):
        lacks = [_LACKS[hole] for hole in _owed(served) if sourced or hole != "reference"]
        if lacks:
            yield Finding(
                "course.yml",
                ("objectives", index, "id"),
                f"The objective `{served.objective.id}` has {', '.join(lacks)}.",
                "Name it where it is practised and in the agenda, and its sources as its own `references`.",
            )


def _owed(served: Served) -> Iterator[Hole]:
    """What it lacks beside what another check, on what is neither taught nor proven, tells of it."""
    if (served.lessons or served.agenda) and "proof" not in served.holes:
        yield from (hole for hole in served.holes if hole in _LACKS)
