"""The declared phase must be the one that time and signs give."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level

LEVEL: Level = "error"


def check(evidence: Evidence) -> Iterator[Finding]:
    """Visits whose declared phase is not the worked-out one."""
    words = evidence.course.content.phases.phase_words
    for case, index, visit, judged in evidence.visits():
        if judged.phase.possible == (visit.phase,):
            continue
        possible = " or ".join(words[phase] for phase in judged.phase.possible)
        reasons = " ".join(reason.text for reason in judged.phase.reasons)
        yield Finding(
            case_file(case),
            ("visits", index, "phase"),
            f"The phase is declared as {words[visit.phase]}, but time and signs give {possible}. {reasons}",
            f"Write `phase: {judged.phase.possible[0]}`, or correct the time or the findings."
            if len(judged.phase.possible) == 1
            else "Record the findings that are missing, so that one phase remains.",
        )
