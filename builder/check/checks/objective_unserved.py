"""Every objective is taught somewhere, and proven by a test or a station."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.matrix import matrix

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
    for index, served in enumerate(matrix(evidence.course)):
        lacks = [] if served.lessons or served.agenda else ["taught by no lesson and no part of the agenda"]
        lacks += ["asked for by no test and no station"] if "proof" in served.holes else []
        if lacks:
            yield Finding(
                "course.yml",
                ("objectives", index, "id"),
                f"The objective `{served.objective.id}` is {' and '.join(lacks)}.",
                "Name it where it is taught and in a row of a test's plan or a station, or leave it out.",
            )
