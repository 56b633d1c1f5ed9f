"""What the checks look at: the course as read, the judge's answers, and the proofs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from builder.diagnostic import Diagnostic, Level
from builder.model.case import Case, Visit
from builder.model.judgement import Covered, FailedExample, Hole, VisitJudgement
from builder.model.library import Course
from builder.place import Path, Place


@dataclass(frozen=True)
class Evidence:
    """One course with everything that was worked out about it."""

    course: Course
    judged: dict[str, tuple[VisitJudgement, ...]]
    failed_examples: tuple[FailedExample, ...] = ()
    holes: tuple[Hole, ...] = ()
    covered: tuple[Covered, ...] = ()
    known: frozenset[str] = field(default=frozenset())

    def visits(self) -> Iterator[tuple[Case, int, Visit, VisitJudgement]]:
        """Every judged visit with its case and number."""
        for case in self.course.cases.values():
            for index, visit in enumerate(case.visits):
                yield case, index, visit, self.judged[case.id][index]


@dataclass(frozen=True)
class Finding:
    """What a check says: where, what, and the remedy; its name and level are added by the registry.

    `line` and `column` are for files that are no mapping, such as lessons.
    """

    file: str
    path: Path
    message: str
    remedy: str
    rules: tuple[str, ...] = ()
    line: int = 0
    column: int = 1


def diagnostic(evidence: Evidence, name: str, level: Level, found: Finding) -> Diagnostic:
    """A finding with its place in the author's file."""
    places = evidence.course.places.get(found.file)
    place = places.of(found.path) if places else Place(found.file)
    if found.line:
        place = Place(found.file, found.line, found.column, found.line, found.column)
    return Diagnostic(name, level, place, found.message, found.remedy, found.path, found.rules)


def content_file(evidence: Evidence, name: str) -> str:
    """The file of a rule or card, such as `rules/fever.yml`: the course's own, or else the shipped one."""
    return name if name in evidence.course.places else f"content/{name}"


def case_file(case: Case) -> str:
    """The file a case stands in."""
    return f"cases/{case.id}.yml"
