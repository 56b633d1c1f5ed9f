"""The declared severity must agree with the published table, where one can grade."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "A published table grades this injury by what was measured. A milder word than the table's would "
    "open treatment too early."
)
BAD = Example(
    "cases/fence.yml",
    """
    severity: moderate
    findings:
      swelling_trend: steady
      knee_flexion: 100
    """,
    at="visits/0",
)
GOOD = Example(
    "cases/fence.yml",
    """
    severity: mild
    findings:
      swelling_trend: steady
      knee_flexion: 100
    """,
    at="visits/0",
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Visits whose declared severity is not the graded one."""
    words = evidence.course.content.severity.words
    for case, index, visit, judged in evidence.visits():
        declared = visit.severity or case.severity
        if declared is None or not judged.severity.gradable or judged.severity.possible == (declared,):
            continue
        graded = judged.severity.possible[0]
        table = (f"table.{judged.severity.table}",) if judged.severity.table else ()
        path = ("visits", index, "severity") if visit.severity else ("severity",)
        yield Finding(
            case_file(case),
            path,
            f"Severity is declared as {words[declared]}, but the table gives {words[graded]}. "
            + judged.severity.reasons[0].text,
            f"Write `severity: {graded}`, or correct the measure.",
            table,
        )
