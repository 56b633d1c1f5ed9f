"""The declared phase must be the one that time and signs give."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.case import Case
from builder.model.judgement import VisitJudgement
from builder.model.kind import Example
from builder.model.tables import PhaseBook

LEVEL: Level = "error"
WHY = (
    "Whoever writes a case and the rules must mean the same phase. Where they differ, the time, the "
    "signs or the phase is mistyped."
)
BAD = Example(
    "cases/fence.yml",
    """
    phase: remodelling
    """,
    at="visits/1",
)
GOOD = Example(
    "cases/fence.yml",
    """
    phase: late_repair
    """,
    at="visits/1",
)


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
            _rules(evidence.course.content.phases, case, judged),
        )


def _rules(book: PhaseBook, case: Case, judged: VisitJudgement) -> tuple[str, ...]:
    """The clocks and signs that the phase rests on; where a referral ends all phases, its rules."""
    if judged.session.answer == "refer" and judged.phase.possible == ("none",):
        return tuple(rule.id for rule in judged.session.rules)
    said = [reason.text for reason in judged.phase.reasons]
    clocks = [f"clock.{case.tissue.kind}.{grade}" for grade in judged.severity.possible]
    signs = [
        f"sign.{sign.id}"
        for sign in (*book.signs, *book.doubt)
        if any(text.endswith(sign.text) for text in said)
    ]
    return (*clocks, *signs)
