"""The questions a visit yields by itself; every kind is registered here once, in the order it is asked."""

from __future__ import annotations

from types import ModuleType

from builder.assess.kinds import ask_first, dose, option, order, phase, session, stop
from builder.assess.material import Material
from builder.assess.question import Question
from builder.model.case import Case
from builder.model.judgement import VisitJudgement
from builder.model.library import Course

KINDS: tuple[ModuleType, ...] = (session, phase, option, dose, order, ask_first, stop)


def questions_of(
    course: Course, case: Case, judged: tuple[VisitJudgement, ...], *, alone: bool
) -> tuple[tuple[Question, ...], ...]:
    """The questions of every visit of a case; `alone` where each is to be understood by itself."""
    visits = zip(case.visits, judged, strict=True)
    return tuple(
        tuple(
            question
            for kind in KINDS
            for question in kind.questions(Material(course, case, visit, one, alone))
        )
        for visit, one in visits
    )
