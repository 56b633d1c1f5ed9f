"""A lesson as a page: its Markdown, with each tag replaced by what it places."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from builder.model.course import Lesson
from builder.model.film import clock
from builder.model.lesson import lesson_parts, lesson_pictures, lesson_tags, media_of, without_notes
from builder.model.library import Course
from builder.model.practice import PracticeCase
from builder.model.site import SitePage
from builder.model.study import study_of
from builder.render import address
from builder.render.maker import Maker, all_reviewed
from builder.render.student_placed import Placing, placed, scripts_of
from builder.render.student_start import stem_of


def lesson_page(made: Maker, lesson: Lesson, cases: Mapping[str, PracticeCase]) -> SitePage:
    """The page of one lesson; a tag that names nothing on the site is a Fault."""
    at = address.of_lesson(stem_of(lesson.file))
    text = without_notes(made.course.lessons[stem_of(lesson.file)])
    placing = Placing(made, at, cases)
    parts = [part if isinstance(part, str) else f"\n{placed(placing, part)}\n" for part in lesson_parts(text)]
    unreviewed = made.unreviewed(reviewed=all_reviewed(made.course))
    return SitePage(
        address=at,
        title=lesson.title,
        body="".join([_heading(made, lesson, text), *parts, "\n\n", unreviewed]),
        kind="lesson",
        where=lesson.title,
        markdown=True,
        scripts=scripts_of({tag.kind for tag in lesson_tags(text)}),
    )


def lesson_media(course: Course) -> tuple[str, ...]:
    """The files that the lessons show, each once, such as `media/wrap.png`."""
    texts = (course.lessons[stem_of(lesson.file)] for lesson in course.file.lessons)
    shown = {file for text in texts for file in _shown(course, text)}
    return tuple(sorted(shown & course.media))


def _shown(course: Course, text: str) -> Iterator[str]:
    """The files of one lesson: its pictures, and every format of its films."""
    yield from (media_of(picture) for picture in lesson_pictures(text))
    for tag in lesson_tags(text):
        if tag.kind == "film" and tag.name in course.films:
            yield from (one.file for one in course.films[tag.name].files)


def _heading(made: Maker, lesson: Lesson, text: str) -> str:
    """How long it takes, and the lesson's title unless its text begins with a heading of its own."""
    study = study_of(made.course, stem_of(lesson.file))
    values = {
        "title": "" if text.lstrip().startswith("# ") else lesson.title,
        "minutes": max(1, round(study.minutes())),
        "film": clock(study.film) if study.film else "",
    }
    return made.fill("parts/lesson_title.html", values).strip() + "\n\n"
