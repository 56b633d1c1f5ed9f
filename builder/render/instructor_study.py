"""How long the lessons take: read and watched once, lesson by lesson, and by the published formulas."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from builder.model.film import clock
from builder.model.home_study import StudyLoad, study_lengths
from builder.model.library import Course
from builder.model.study import USUAL, WORDS_A_MINUTE, Study, study_of
from builder.render.student_start import stem_of


@dataclass(frozen=True)
class Row:
    """One lesson, or all under no title: words, film, minutes, and those of quick and slow readers."""

    title: str
    words: str
    film: str
    minutes: str
    span: tuple[str, str]


@dataclass(frozen=True)
class Formula:
    """What one published formula gives, in hours of its own: exactly, and as it is credited."""

    id: str
    exact: str
    credit: str


def study_values(course: Course) -> dict[str, object]:
    """What the page says of the study time of a course."""
    studies = [(one.title, study_of(course, stem_of(one.file))) for one in course.file.lessons]
    every = sum((study for _, study in studies), Study())
    return {
        "lengths": [_row(title, study) for title, study in [*studies, ("", every)]],
        "speed": WORDS_A_MINUTE,
        "usual": USUAL,
        "formulas": list(_formulas(every, _questions(course))),
        "questions": _questions(course),
    }


def _row(title: str, study: Study) -> Row:
    slow, quick = (_figures(study.minutes(speed), 1) for speed in USUAL)
    return Row(title, f"{study.words:,}", clock(study.film), _figures(study.minutes(), 1), (quick, slow))


def _formulas(study: Study, questions: int) -> Iterator[Formula]:
    for one in study_lengths(StudyLoad(study.words, study.film_minutes, questions)):
        yield Formula(one.id, _figures(one.exact, 2), _figures(one.credit, 2))


def _questions(course: Course) -> int:
    """The questions that one version of every test asks."""
    return sum(row.count for test in course.file.tests for row in test.plan)


def _figures(value: Fraction, places: int) -> str:
    return f"{float(value):.{places}f}"
