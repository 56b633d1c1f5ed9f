"""A lesson as a page: its Markdown, with each tag replaced by what it places."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NoReturn

from builder.doors.page import markup
from builder.fault import Fault
from builder.model.card import PHASES
from builder.model.course import Lesson
from builder.model.lesson import LessonTag, lesson_parts, lesson_pictures, media_of, without_notes
from builder.model.library import Course
from builder.model.practice import PracticeCase
from builder.model.site import SitePage
from builder.render import address
from builder.render.draw.pattern import swatch
from builder.render.draw.stroke import stroke
from builder.render.maker import Maker, all_reviewed
from builder.render.student_question import question_part
from builder.render.student_start import stem_of


def lesson_page(made: Maker, lesson: Lesson, cases: Mapping[str, PracticeCase]) -> SitePage:
    """The page of one lesson; a tag that names nothing on the site is a Fault."""
    at = address.of_lesson(stem_of(lesson.file))
    text = without_notes(made.course.lessons[stem_of(lesson.file)])
    placed = [_heading(made, lesson, text)]
    placed += [
        part if isinstance(part, str) else f"\n{_placed(made, at, part, cases)}\n"
        for part in lesson_parts(text)
    ]
    return SitePage(
        address=at,
        title=lesson.title,
        body="".join(placed) + "\n\n" + made.unreviewed(reviewed=all_reviewed(made.course)),
        kind="lesson",
        where=lesson.title,
        markdown=True,
    )


def lesson_media(course: Course) -> tuple[str, ...]:
    """The files that the lessons show, each once, such as `media/wrap.png`."""
    texts = (course.lessons[stem_of(lesson.file)] for lesson in course.file.lessons)
    shown = {media_of(picture) for text in texts for picture in lesson_pictures(text)}
    return tuple(sorted(shown & course.media))


def _heading(made: Maker, lesson: Lesson, text: str) -> str:
    """The lesson's title, unless its text begins with a heading of its own."""
    return (
        ""
        if text.lstrip().startswith("# ")
        else made.fill("parts/lesson_title.html", {"title": lesson.title}) + "\n\n"
    )


def _placed(made: Maker, at: str, tag: LessonTag, cases: Mapping[str, PracticeCase]) -> str:
    if tag.kind == "phases":
        words = made.course.content.phases.phase_words
        shown = [
            {"word": words[phase], "swatch": markup(swatch(phase))} for phase in PHASES if phase != "none"
        ]
        return made.fill("parts/phases.html", {"phases": shown}).strip()
    if tag.kind == "stroke":
        card = made.course.content.cards.get(tag.name) or _missing(tag)
        return made.fill(
            "parts/stroke.html", {"figure": markup(stroke(card, made.say)), "card": card}
        ).strip()
    if tag.kind == "question":
        question = made.course.questions.get(tag.name)
        if question is None or question.use == "test":
            _missing(tag)
        return question_part(made, question)
    goal, kind, title, note = _goal(made, tag, cases)
    values = {"link": address.way(at, goal), "kind": kind, "title": title, "note": note}
    return made.fill("parts/placed.html", values).strip()


def _goal(made: Maker, tag: LessonTag, cases: Mapping[str, PracticeCase]) -> tuple[str, str, str, str]:
    """Where a tag leads: address, what it is, title and a word about it."""
    say = made.say
    if tag.kind == "flags":
        return address.FLAGS, "", say("flags"), say("flags_note")
    if tag.kind == "card":
        card = made.course.content.cards.get(tag.name) or _missing(tag)
        return address.of_card(card.id), say(f"kind_{card.kind}"), card.name, card.what
    if tag.kind == "case":
        case = cases.get(tag.name) or _missing(tag)
        return address.of_case(case.id), say("practice_case"), case.title, case.subtitle
    test = next((one for one in made.course.file.tests if one.id == tag.name), None) or _missing(tag)
    return address.of_test(test.id), say("test"), test.title, say("test_note")


def _missing(tag: LessonTag) -> NoReturn:
    raise Fault(
        f"A lesson places [{tag.kind} {tag.name}] on line {tag.line}, which the site does not have.",
        "Name a card, a practice case, a practice question or a test of this course.",
    )
