"""What the tags of a lesson place on its page: one maker for each kind of tag."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import NoReturn

from builder.doors.page import markup
from builder.fault import Fault
from builder.model.card import PHASES
from builder.model.lesson import LessonTag, TagKind
from builder.model.practice import PracticeCase
from builder.render import address
from builder.render.assets import with_kinds
from builder.render.draw.pattern import swatch
from builder.render.draw.technique import beneath, technique
from builder.render.draw.timeline import timelines
from builder.render.maker import Maker
from builder.render.student_film import SCRIPT, film_part
from builder.render.student_question import SCRIPT as ANSWERING
from builder.render.student_question import question_part


@dataclass(frozen=True)
class Placing:
    """One lesson's page that is being made: where it stands, and what its tags may place."""

    made: Maker
    at: str
    cases: Mapping[str, PracticeCase]

    def fill(self, part: str, **values: object) -> str:
        """A part of the page from its template."""
        return self.made.fill(f"parts/{part}.html", values).strip()

    def way_to(self, goal: str, kind: str, title: str, note: str) -> str:
        """The way to another page: what it is, its title, and a word about it."""
        return self.fill("placed", link=address.way(self.at, goal), kind=kind, title=title, note=note)


def placed(placing: Placing, tag: LessonTag) -> str:
    """What a tag places, as markup; one that names nothing on the site is a Fault."""
    return _PLACES[tag.kind](placing, tag)


def scripts_of(kinds: set[TagKind]) -> tuple[str, ...]:
    """The scripts that a page with tags of these kinds needs."""
    return with_kinds(sorted(_SCRIPTS[kind] for kind in kinds & _SCRIPTS.keys()))


def _phases(placing: Placing, _tag: LessonTag) -> str:
    words = placing.made.course.content.phases.phase_words
    shown = [{"word": words[phase], "swatch": markup(swatch(phase))} for phase in PHASES if phase != "none"]
    return placing.fill("phases", phases=shown)


def _figure(placing: Placing, tag: LessonTag) -> str:
    """The figure of a card, else the healing timeline of a case; the way to a case that has none."""
    made, content = placing.made, placing.made.course.content
    card, case = content.cards.get(tag.name), placing.cases.get(tag.name)
    if card is not None and card.drawn:
        drawn = technique(card, content.facts.written, made.say)
        under = beneath(card, content.facts.written, made.say)
        return placing.fill("figure", figure=markup(drawn), title=card.name, beneath=under, wide=False)
    line = next((one.timeline for one in reversed(case.visits) if one.timeline), None) if case else None
    if case is None or line is None:
        return _case(placing, tag)
    drawn = timelines(line, f"figure-{case.id}", made.say)
    return placing.fill("figure", figure=markup(drawn), title=case.title, beneath=[line.words], wide=True)


def _question(placing: Placing, tag: LessonTag) -> str:
    question = placing.made.course.questions.get(tag.name)
    if question is None or question.use == "test":
        _missing(tag)
    return question_part(placing.made, question)


def _film(placing: Placing, tag: LessonTag) -> str:
    film = placing.made.course.films.get(tag.name) or _missing(tag)
    return film_part(placing.made, placing.at, film)


def _flags(placing: Placing, _tag: LessonTag) -> str:
    say = placing.made.say
    return placing.way_to(address.FLAGS, "", say("flags"), say("flags_note"))


def _card(placing: Placing, tag: LessonTag) -> str:
    card = placing.made.course.content.cards.get(tag.name) or _missing(tag)
    return placing.way_to(
        address.of_card(card.id), placing.made.say(f"kind_{card.kind}"), card.name, card.what
    )


def _case(placing: Placing, tag: LessonTag) -> str:
    case = placing.cases.get(tag.name) or _missing(tag)
    return placing.way_to(
        address.of_case(case.id), placing.made.say("practice_case"), case.title, case.subtitle
    )


def _test(placing: Placing, tag: LessonTag) -> str:
    say, tests = placing.made.say, placing.made.course.file.tests
    test = next((one for one in tests if one.id == tag.name), None) or _missing(tag)
    return placing.way_to(address.of_test(test.id), say("test"), test.title, say("test_note"))


def _missing(tag: LessonTag) -> NoReturn:
    raise Fault(
        f"A lesson places [{tag.kind} {tag.name}] on line {tag.line}, which the site does not have.",
        "Name a card, a figure, a film, a practice case, a practice question or a test of this course.",
    )


_PLACES: Mapping[TagKind, Callable[[Placing, LessonTag], str]] = {
    "card": _card,
    "case": _case,
    "figure": _figure,
    "film": _film,
    "flags": _flags,
    "phases": _phases,
    "question": _question,
    "test": _test,
}
_SCRIPTS: Mapping[TagKind, str] = {"film": SCRIPT, "question": ANSWERING}
