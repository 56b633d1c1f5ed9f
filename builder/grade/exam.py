"""Whether the test is passed, and every question that must be right."""

from __future__ import annotations

from fractions import Fraction

from builder.grade.attempts import decisive
from builder.model.exact import number, percent
from builder.model.records import Attempt, Requirement


def exam_requirements(attempts: tuple[Attempt, ...], test: str) -> tuple[Requirement, ...]:
    """The overall mark, and beside it the must-pass questions where the version has any."""
    deciding = decisive(attempts, test)
    if deciding is None:
        return (Requirement(kind="test", name=test, met=False, reason=_nothing(attempts, test)),)
    mark = Requirement(kind="test", name=test, met=_high_enough(deciding), reason=_mark_in_words(deciding))
    musts = [one for one in deciding.marks if one.must_pass]
    missed = [one.question for one in musts if one.mark != 1]
    if deciding.waits:
        return (Requirement(kind="test", name=test, met=False, open=True, reason=_waits_in_words(deciding)),)
    if not musts:
        return (mark,)
    reason = f"{len(musts) - len(missed)} of {len(musts)} questions that must be right are"
    reason += f"; not right: {', '.join(missed)}" if missed else ""
    return (mark, Requirement(kind="must_pass", name=test, met=not missed, reason=f"{reason}."))


def least_right(pass_mark: Fraction, questions: int) -> int:
    """The least number of wholly right answers that reaches a pass mark."""
    return -(-pass_mark * questions // 1)


def _high_enough(attempt: Attempt) -> bool:
    return attempt.total >= attempt.pass_mark


def _mark_in_words(attempt: Attempt) -> str:
    count = len(attempt.marks)
    blank = [one.question for one in attempt.marks if not one.given]
    earned = f"{number(attempt.total * count)} of {count} marks, {percent(attempt.total)}"
    words = (
        f"Attempt {attempt.number}, version {attempt.version}: {earned}; {percent(attempt.pass_mark)} passes"
    )
    return f"{words}; unanswered: {', '.join(blank)}." if blank else f"{words}."


def _waits_in_words(attempt: Attempt) -> str:
    count = len(attempt.marks)
    answers = "1 written answer waits" if attempt.waits == 1 else f"{attempt.waits} written answers wait"
    earned = number(attempt.total * count)
    return (
        f"Not decided: {answers} for a person to mark it; so far {earned} of {count} marks in attempt "
        f"{attempt.number}, version {attempt.version}; {percent(attempt.pass_mark)} passes."
    )


def _nothing(attempts: tuple[Attempt, ...], test: str) -> str:
    late = [str(one.number) for one in attempts if one.test == test]
    if late:
        return f"Only attempt {', '.join(late)} is there, which is beyond the tries."
    return "No answer sheet has come in."
