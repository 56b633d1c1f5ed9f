"""Opening a course: read it, judge it, check it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any

from builder.assess.shortfalls import shortfalls
from builder.check.accept import accept, guarded_rules
from builder.check.evidence import Evidence
from builder.check.registry import run_checks
from builder.check.show import as_json, as_text
from builder.diagnostic import Diagnostic, in_order
from builder.disk import shipped
from builder.fault import Fault
from builder.flow.kinds import LEVELS
from builder.judge.coverage import covered
from builder.judge.examples import failed_examples
from builder.judge.explain import as_json as explained_as_json
from builder.judge.judge import Judge
from builder.judge.prove import holes
from builder.judge.trace import in_words
from builder.model.judgement import VisitJudgement
from builder.model.library import Course
from builder.place import Places
from builder.read.course import read_all
from builder.read.nearest import suggest


@dataclass(frozen=True)
class Opened:
    """A course with everything that is to fix; `course` is None where it could not be put together."""

    course: Course | None
    judged: dict[str, tuple[VisitJudgement, ...]]
    to_fix: tuple[Diagnostic, ...]
    places: dict[str, Places]

    @property
    def sound(self) -> bool:
        """Whether nothing is left that must be fixed before building."""
        return self.course is not None and all(one.level != "error" for one in self.to_fix)

    def text(self, *, width: int, colour: bool) -> str:
        """What is to fix, as printed on a terminal."""
        return as_text(self.to_fix, self.places, width=width, colour=colour)

    def json(self) -> dict[str, Any]:
        """What is to fix, in the shape `caseloom/check/1`."""
        return as_json(self.to_fix)


def open_course(folder: Path) -> Opened:
    """Read a course folder, judge its cases by its rules, and check all of it."""
    if not (folder / "course.yml").is_file():
        named = folder if folder.name else "This folder"
        raise Fault(f"{named} holds no course.yml.", "Name the folder of a course.")
    reading = read_all(folder, shipped("content"), shipped("site_config.yml"))
    course = reading.course
    if course is None:
        return Opened(None, {}, tuple(reading.found), reading.places)
    judge = Judge(course.content)
    judged = {case.id: judge.case(case) for case in course.cases.values()}
    evidence = Evidence(
        course,
        judged,
        tuple(failed_examples(course.content.rules, judge.space)),
        tuple(holes(course.content, judge.space)),
        covered(judge, course.cases, judged),
    )
    found = [*reading.found, *run_checks(evidence), *shortfalls(course, judged)]
    told = accept(in_order(found), reading.places, LEVELS, guarded_rules(course.content), suggest)
    return Opened(course, judged, told, reading.places)


def explain_case(opened: Opened, name: str) -> tuple[list[str], dict[str, Any]]:
    """The judgement of one case, in words and in the shape `caseloom/explain/1`."""
    if opened.course is None or name not in opened.course.cases:
        known = opened.course.cases if opened.course else ()
        raise Fault(f"There is no case `{name}`.", suggest(name, known, "No case can be read."))
    case, judged = opened.course.cases[name], opened.judged[name]
    return list(in_words(case, judged, opened.course.content)), explained_as_json(case, judged)
