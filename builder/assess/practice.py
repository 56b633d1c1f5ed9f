"""Practice: the cases of a course's practice sets, with a reason for every option."""

from __future__ import annotations

from collections.abc import Container, Mapping, Sequence
from types import MappingProxyType

from builder.assess.keyed import keyed_parts
from builder.assess.laying import Laid, laid_out
from builder.assess.opaque import Opaque
from builder.assess.question import Judged, Question
from builder.assess.questions import questions_of
from builder.assess.scene import client_words, scene_of
from builder.assess.timeline import timeline_of
from builder.model.case import Case
from builder.model.judgement import VisitJudgement
from builder.model.library import Course
from builder.model.practice import Feedback, PracticeCase, PracticeQuestion, PracticeVisit
from builder.model.rested import phase_reviewed

OPEN_TO_ALL = b"practice hides nothing"


def practice_cases(
    course: Course,
    judged: Mapping[str, tuple[VisitJudgement, ...]],
    known: Mapping[str, PracticeCase] = MappingProxyType({}),
) -> tuple[PracticeCase, ...]:
    """Every case of the practice sets once, in the order of the sets; those `known` are not made again."""
    names = dict.fromkeys(name for one in course.file.practice for name in one.cases)
    return tuple(known.get(name) or practice_case(course, course.cases[name], judged[name]) for name in names)


def room_cases(
    course: Course,
    judged: Mapping[str, tuple[VisitJudgement, ...]],
    known: Container[str] = frozenset(),
) -> dict[str, PracticeCase]:
    """What may be shown to a whole room, by id: every case that stands in no test and is not `known`."""
    tested = {name for one in course.file.tests for name in one.cases}
    return {
        name: practice_case(course, case, judged[name])
        for name, case in course.cases.items()
        if name not in tested and name not in known
    }


def practice_case(course: Course, case: Case, judged: tuple[VisitJudgement, ...]) -> PracticeCase:
    """One case to practise on, visit by visit."""
    questions = questions_of(course, case, judged, alone=False)
    visits = (
        _visit(course, case, number, judged[number], questions[number]) for number in range(len(judged))
    )
    return PracticeCase(
        id=case.id,
        title=case.title,
        subtitle=client_words(course.content, case),
        mechanism=case.mechanism,
        visits=tuple(visits),
    )


def _visit(
    course: Course, case: Case, number: int, judged: VisitJudgement, questions: Sequence[Question]
) -> PracticeVisit:
    visit = case.visits[number]
    questions = _one_of_a_topic(questions)
    laid = laid_out([one.shown for one in questions], Opaque(OPEN_TO_ALL, case.id))
    first = judged.session.first_action
    asked = tuple(_question(one, laying) for one, laying in zip(questions, laid, strict=True))
    timeline = timeline_of(course.content, case, number, judged)
    dated = timeline is None or phase_reviewed(course.content, judged)
    return PracticeVisit(
        id=visit.id,
        scene=scene_of(course.content, case, visit, alone=False),
        questions=asked,
        timeline=timeline,
        first_action_do=first.do if first else (),
        first_action_avoid=first.avoid if first else (),
        next=visit.next or "",
        reviewed=dated and all(one.reviewed for one in asked),
    )


def _one_of_a_topic(questions: Sequence[Question]) -> list[Question]:
    """The first question of each topic, so that a visit stays short."""
    once: dict[str, Question] = {}
    for one in questions:
        once.setdefault(one.shown.topic, one)
    return list(once.values())


def _question(question: Question, laid: Laid) -> PracticeQuestion:
    said = dict(zip(laid.ids, _feedback(question.judged, laid), strict=True))
    held = keyed_parts(laid, question.judged)
    return PracticeQuestion(
        topic=question.shown.topic,
        question=laid.question,
        right=held.right,
        feedback=tuple(said[option] for option in held.options),
        reviewed=all(one.ground.reviewed for one in question.judged.said),
    )


def _feedback(judged: Judged, laid: Laid) -> list[Feedback]:
    return [
        Feedback(
            option=option,
            mark=said.mark,
            word=said.word,
            reason=said.reason,
            rests_on=said.ground.rests_on,
            contested=said.ground.contested,
            would_change=said.would_change,
        )
        for option, said in zip(laid.ids, judged.said, strict=True)
    ]
