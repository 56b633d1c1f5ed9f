"""As much of a half-written course as can be shown: the last good case for one that has a fault now."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path

from builder.model.case import Case
from builder.model.course import CourseFile
from builder.model.library import Course


def whole_enough(course: Course, good: Mapping[str, Case], folder: Path) -> Course:
    """The course with the last good state of every case whose file is there, and no use of any other."""
    cards = course.content.cards
    again = {
        name: case
        for name, case in good.items()
        if name not in course.cases and (folder / "cases" / f"{name}.yml").is_file() and _has(case, cards)
    }
    named = [one for practice in course.file.practice for one in practice.cases]
    named += [one for test in course.file.tests for one in test.cases]
    cases = {name: course.cases.get(name) or again[name] for name in sorted({*course.cases, *again})}
    if not again and cases.keys() >= set(named):
        return course
    stations = {name: one for name, one in course.stations.items() if one.case in cases}
    return replace(course, cases=cases, stations=stations, file=_without_lost(course.file, cases))


def _without_lost(file: CourseFile, cases: Mapping[str, Case]) -> CourseFile:
    """The course file as if the cases that cannot be shown had not been named."""
    practice = [
        one.model_copy(update={"cases": tuple(name for name in one.cases if name in cases)})
        for one in file.practice
    ]
    tests = tuple(one for one in file.tests if cases.keys() >= set(one.cases))
    shown = tuple(one for one in practice if one.cases)
    return file.model_copy(update={"practice": shown, "tests": tests})


def _has(case: Case, cards: Mapping[str, object]) -> bool:
    return all(option.card in cards for visit in case.visits for option in (*visit.chosen, *visit.wrong))
