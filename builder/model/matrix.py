"""What serves each objective of a course: content, agenda, references, questions, lines of a rubric."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from builder.model.case import Case
from builder.model.course import AgendaItem, Lesson, Objective
from builder.model.lesson import lesson_tags
from builder.model.library import Course
from builder.model.plan import CourseTest, PlanRow
from builder.model.station import Criterion, Station

Hole = Literal["lesson", "practice", "minutes", "reference", "proof"]
TAUGHT = ("lecture", "hands_on")


@dataclass(frozen=True)
class Proof:
    """The lines of one station's rubric that prove an objective."""

    station: Station
    lines: tuple[Criterion, ...]


@dataclass(frozen=True)
class Served:
    """One objective with all that serves it; `held` says whether the course has an agenda."""

    objective: Objective
    lessons: tuple[Lesson, ...]
    practice: tuple[Case, ...]
    agenda: tuple[AgendaItem, ...]
    planned: tuple[tuple[CourseTest, PlanRow], ...]
    proofs: tuple[Proof, ...]
    held: bool

    @property
    def holes(self) -> tuple[Hole, ...]:
        """What it lacks; a course without an agenda owes it no minutes."""
        there: dict[Hole, bool] = {
            "lesson": bool(self.lessons),
            "practice": bool(self.practice),
            "minutes": bool(self.agenda) or not self.held,
            "reference": bool(self.objective.references),
            "proof": bool(self.planned or self.proofs),
        }
        return tuple(name for name, here in there.items() if not here)


def matrix(course: Course) -> tuple[Served, ...]:
    """Every objective of a course, in its order, with what serves it."""
    return tuple(_served(course, one) for one in course.file.objectives)


def lessons_without_objective(course: Course) -> tuple[Lesson, ...]:
    """Every lesson that serves no objective, neither by itself nor by a case it places."""
    return tuple(one for one in course.file.lessons if not objectives_of_lesson(course, one))


def items_without_objective(course: Course) -> tuple[int, ...]:
    """The places, in the agenda, of all that is taught and serves no objective."""
    return tuple(at for at, one in enumerate(course.file.agenda) if one.kind in TAUGHT and not one.objectives)


def objectives_of_lesson(course: Course, lesson: Lesson) -> set[str]:
    """The objectives a lesson names, or else those of the cases it places."""
    text = course.lessons.get(lesson.file.rpartition("/")[2].removesuffix(".md"), "")
    named = [tag.name for tag in lesson_tags(text) if tag.kind == "case"]
    placed = [course.cases[name] for name in named if name in course.cases]
    return set(lesson.objectives) or {one for case in placed for one in case.objectives}


def objectives_of_station(course: Course, station: Station) -> tuple[str, ...]:
    """The objectives a station proves, or else those of its case."""
    case = course.cases.get(station.case)
    return station.objectives or (case.objectives if case else ())


def _served(course: Course, objective: Objective) -> Served:
    name, file = objective.id, course.file
    practised = dict.fromkeys(case for one in file.practice for case in one.cases)
    cases = (course.cases[one] for one in practised if one in course.cases)
    return Served(
        objective=objective,
        lessons=tuple(one for one in file.lessons if name in objectives_of_lesson(course, one)),
        practice=tuple(one for one in cases if name in one.objectives),
        agenda=tuple(one for one in file.agenda if name in one.objectives),
        planned=tuple((test, row) for test in file.tests for row in test.plan if row.objective == name),
        proofs=tuple(_proofs(course, name)),
        held=bool(file.agenda),
    )


def _proofs(course: Course, name: str) -> Iterator[Proof]:
    for station in course.stations.values():
        whole = objectives_of_station(course, station)
        lines = tuple(one for one in station.criteria if name in (one.objectives or whole))
        if lines:
            yield Proof(station, lines)
