"""Every taught part of the agenda serves an objective."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.matrix import items_without_objective

LEVEL: Level = "advice"
WHY = "Time that serves no objective is time that nobody can account for. An approving body may refuse it."
_AGENDA = """
agenda:
  - {day: 1, start: 09:00, end: 10:00, title: Cold, kind: lecture, objectives: [choose]}
  - {day: 1, start: 10:00, end: 11:00, title: Pads and wraps, kind: hands_on%s}
"""
BAD = Example("course.yml", _AGENDA % "")
GOOD = Example("course.yml", _AGENDA % ", objectives: [choose]")


def check(evidence: Evidence) -> Iterator[Finding]:
    """Lectures and hands-on work that name no objective."""
    for at in items_without_objective(evidence.course):
        title = evidence.course.file.agenda[at].title
        yield Finding(
            "course.yml",
            ("agenda", at),
            f"“{title}” in the agenda serves no objective.",
            "Write under `objectives` what it is for.",
        )
