"""Two worlds that differ only in what is right, and leaks of every kind planted into them on purpose."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

import pytest

from builder.assess import papers, practice
from builder.assess.placed import placed_questions
from builder.assess.question import Choice, Question
from builder.assess.written import written_question
from builder.check.leak.withheld import pool_cases
from builder.doors.site import build_site
from builder.flow.opened import Opened
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.site import SitePage, SitePlan
from builder.render.student import student_site

SECRET = bytes(range(32))
Turn = Callable[[Question], Question]
Files = dict[str, bytes]


@dataclass(frozen=True)
class Plant:
    """One leak: done to the pool, to the plan of the site, or to the course."""

    name: str
    pool: Turn = lambda question: question
    plan: Callable[[SitePlan, Sequence[KeyRing]], SitePlan] = lambda plan, _: plan
    course: Callable[[Course], Course] = lambda course: course
    searched: bool = False


NOTHING = Plant("nothing")


def as_judged(question: Question) -> Question:
    """The world as it is."""
    return question


def turned(question: Question) -> Question:
    """The world in which something else is right, for other reasons; what is shown is the same.

    The next option, the next step first, the next partner, twice the number, the votes of the next one.
    """
    shown, judged = question.shown, question.judged
    places = range(len(shown.options))
    right = [(place + 1) % len(places) for place in judged.right]
    pairs = [(left, (partner + 1) % len(shown.partners)) for left, partner in judged.pairs]
    return Question(
        shown,
        replace(
            judged,
            right=tuple(right if shown.kind == "order" else sorted(right)),
            said=tuple(replace(judged.said[place - 1], reason=f"Turned {place}.") for place in places),
            must=tuple((then, first) for first, then in judged.must),
            pairs=tuple(pairs),
            spare=tuple(one and replace(one, reason="Turned.") for one in judged.spare),
            votes=(*judged.votes[1:], *judged.votes[:1]),
            within=judged.within and judged.within.model_copy(update={"most": judged.within.most * 2 + 1}),
            numbers=tuple((value, replace(said, reason="Turned.")) for value, said in judged.numbers),
            rubric=judged.rubric and judged.rubric.model_copy(update={"example": "Turned."}),
        ),
    )


def turn_judgements(patch: pytest.MonkeyPatch, course: Course, turn: Turn) -> None:
    """Have all that is tested judged otherwise, wherever it is made: of cases, or as an author wrote it."""
    tested = {case.id for case in pool_cases(course)}
    patch.setattr(papers, "written_question", lambda *given: turn(written_question(*given)))
    for module in (papers, practice):
        plain = module.questions_of

        def judged_anew(*given: object, plain: Callable[..., object] = plain, **how: object) -> object:
            visits = plain(*given, **how)
            return tuple(
                tuple(turn(one) if one.shown.case in tested else one for one in visit)
                for visit in visits  # type: ignore[attr-defined]
            )

        patch.setattr(module, "questions_of", judged_anew)


def site_of(opened: Opened, target: Path, turn: Turn, plant: Plant = NOTHING) -> tuple[Files, list[KeyRing]]:
    """The finished student site of a world, with what was planted, and its keys."""
    assert opened.course is not None
    course = plant.course(opened.course)
    with pytest.MonkeyPatch.context() as patch:
        turn_judgements(patch, course, turn)
        plain = papers.pool_of
        patch.setattr(papers, "pool_of", lambda *given: tuple(plant.pool(one) for one in plain(*given)))
        made = papers.papers_and_keys(course, opened.judged, SECRET)
        shown = practice.practice_cases(course, opened.judged)
    rings = [ring for _, ring in made]
    placed = placed_questions(course)
    plan = student_site(course, shown, tuple(published for published, _ in made), placed=placed)
    build_site(plant.plan(plan, rings), target)
    return files_in(target), rings


def files_in(folder: Path) -> Files:
    """Every file of a folder by its address."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def differing(one: Files, other: Files) -> list[str]:
    """The files that are not the same byte for byte in both."""
    return sorted(name for name in one.keys() | other.keys() if one.get(name) != other.get(name))


def _in_the_id(question: Question) -> Question:
    shown = replace(question.shown, visit=f"{question.shown.visit}{question.judged.right}")
    return replace(question, shown=shown)


def _in_the_order(question: Question) -> Question:
    places = sorted(range(len(question.shown.options)), key=lambda place: place not in question.judged.right)
    options = tuple(question.shown.options[place] for place in places)
    said = tuple(question.judged.said[place] for place in places)
    right = tuple(range(len(question.judged.right)))
    return Question(
        replace(question.shown, options=options, in_order=True),
        replace(question.judged, right=right, said=said),
    )


def _in_the_shape(question: Question) -> Question:
    options = tuple(
        Choice(one.title, (*one.chips, "with care")) if place in question.judged.right else one
        for place, one in enumerate(question.shown.options)
    )
    return replace(question, shown=replace(question.shown, options=options))


def _in_the_steps(question: Question) -> Question:
    if question.shown.kind != "order":
        return question
    options = tuple(question.shown.options[place] for place in question.judged.right)
    return replace(question, shown=replace(question.shown, options=options, in_order=True))


def _in_the_hint(question: Question) -> Question:
    most = question.judged.within.most if question.judged.within else ""
    return replace(question, shown=replace(question.shown, hint=f"{question.shown.hint}{most}"))


def _in_the_partners(question: Question) -> Question:
    belongs = {partner for _, partner in question.judged.pairs}
    partners = tuple(
        Choice(one.title, ("belongs",)) if place in belongs else one
        for place, one in enumerate(question.shown.partners)
    )
    return replace(question, shown=replace(question.shown, partners=partners))


def _in_the_votes(question: Question) -> Question:
    options = tuple(
        Choice(one.title, (str(count),)) if count else one
        for one, count in zip(question.shown.options, question.judged.votes, strict=False)
    )
    return replace(question, shown=replace(question.shown, options=options or question.shown.options))


# What gives a kind of written question away; seen in the papers alone, without a site around them.
OF_KINDS = {
    "order": _in_the_steps,
    "match": _in_the_partners,
    "number": _in_the_hint,
    "panel": _in_the_votes,
}


def _in_the_search(plan: SitePlan, rings: Sequence[KeyRing]) -> SitePlan:
    answers = rings[0].keys[0].answers
    body = " ".join(f"<p>{one.question} {reason}</p>" for one in answers for reason in one.reasons.values())
    notes = SitePage(address="notes.md", title="Notes", body=body)
    return plan.model_copy(update={"pages": (*plan.pages, notes)})


def _in_a_file_name(plan: SitePlan, rings: Sequence[KeyRing]) -> SitePlan:
    answer = next(one for one in rings[0].keys[0].answers if one.case and one.right)
    return plan.model_copy(
        update={"assets": plan.assets | {f"media/{answer.case}-{answer.right[0]}.svg": b"<svg/>"}}
    )


def _in_a_comment(plan: SitePlan, rings: Sequence[KeyRing]) -> SitePlan:
    right = [option for key in rings[0].keys for answer in key.answers for option in answer.right]
    pages = tuple(
        page.model_copy(update={"body": f"{page.body}<!-- {' '.join(right)} -->"})
        if right[0] in page.body
        else page
        for page in plan.pages
    )
    return plan.model_copy(update={"pages": pages})


def _in_practice(course: Course) -> Course:
    tested = course.file.tests[0].cases[0]
    first, *others = course.file.practice
    both = first.model_copy(update={"cases": (*first.cases, tested)})
    return replace(course, file=course.file.model_copy(update={"practice": (both, *others)}))


PLANTS = (
    Plant("id", pool=_in_the_id),
    Plant("order", pool=_in_the_order),
    Plant("option shape", pool=_in_the_shape),
    Plant("search index", plan=_in_the_search, searched=True),
    Plant("file name", plan=_in_a_file_name, searched=True),
    Plant("comment", plan=_in_a_comment, searched=True),
    Plant("practice", course=_in_practice, searched=True),
)
