"""Opening a course: read it, judge it, check it."""

from __future__ import annotations

from collections.abc import Mapping
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
from builder.doors.cache import Cache, NoCache
from builder.fault import Fault
from builder.flow.fingerprints import fingerprints
from builder.flow.kinds import LEVELS
from builder.flow.uncollected import uncollected
from builder.flow.worked import Worker
from builder.judge.examples import failed_examples
from builder.judge.explain import as_json as explained_as_json
from builder.judge.judge import Judge
from builder.judge.trace import in_words
from builder.model.judgement import VisitJudgement
from builder.model.library import Course
from builder.place import Places
from builder.read.course import Reading, read_all
from builder.read.nearest import suggest


@dataclass(frozen=True)
class Opened:
    """A course with everything that is to fix; `course` is None where it could not be put together."""

    course: Course | None
    judged: Mapping[str, tuple[VisitJudgement, ...]]
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


@uncollected()
def open_course(folder: Path, cache: Cache | None = None) -> Opened:
    """Read a course folder, judge its cases by its rules, and check all of it.

    With a cache the same comes out, sooner where nothing has changed.
    """
    if not (folder / "course.yml").is_file():
        named = folder if folder.name else "This folder"
        raise Fault(f"{named} holds no course.yml.", "Name the folder of a course.")
    reading = read_all(folder, shipped("content"), shipped("site_config.yml"))
    course = reading.course
    if course is None:
        return Opened(None, {}, tuple(reading.found), reading.places)
    return judged_course(reading, course, cache or NoCache())


def judged_course(reading: Reading, course: Course, cache: Cache) -> Opened:
    """A course that was read, judged and checked."""
    judge = Judge(course.content)
    worker = Worker(course, judge, fingerprints(course), cache)
    answered = worker.answered()
    examples = tuple(failed_examples(course.content.rules, judge.space))
    evidence = Evidence(course, answered, examples, worker.holes(), worker.covered(answered))
    found = [*reading.found, *run_checks(evidence), *shortfalls(course, worker.probed(answered))]
    told = accept(in_order(found), reading.places, LEVELS, guarded_rules(course.content), suggest)
    return Opened(course, worker.told(answered), told, reading.places)


def explain_case(opened: Opened, name: str, visit: str | None = None) -> tuple[list[str], dict[str, Any]]:
    """The judgement of one case or of one visit of it, in words and in the shape `caseloom/explain/1`."""
    if opened.course is None or name not in opened.course.cases:
        known = opened.course.cases if opened.course else ()
        raise Fault(f"There is no case `{name}`.", suggest(name, known, "No case can be read."))
    case, judged = opened.course.cases[name], opened.judged[name]
    if visit is not None:
        places = {one.id: at for at, one in enumerate(case.visits)}
        if visit not in places:
            raise Fault(f"The case `{name}` has no visit `{visit}`.", suggest(visit, places))
        at = places[visit]
        case, judged = case.model_copy(update={"visits": (case.visits[at],)}), (judged[at],)
    return list(in_words(case, judged, opened.course.content)), explained_as_json(case, judged)
