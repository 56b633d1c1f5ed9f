"""Names that must be known elsewhere: every place where one may stand, in one table."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from builder.diagnostic import Diagnostic
from builder.model.card import Card
from builder.model.case import Case
from builder.model.course import CourseFile
from builder.model.fact import FactBook, ScreeningBook
from builder.model.noun import Noun
from builder.model.question import AuthorQuestion
from builder.model.rule import Rule
from builder.model.station import Station
from builder.model.tables import PhaseBook, SeverityBook
from builder.model.wording import WordingBook
from builder.place import Path
from builder.read.nearest import quoted, suggest
from builder.read.select import KEY, select
from builder.read.shelf import Shelf
from builder.read.written import Written


class Reference(NamedTuple):
    """A place in a sort of file, and what its name must be the name of."""

    model: type[Noun]
    pattern: str
    what: str


REFERENCES = (
    Reference(Case, "objectives/*", "objective"),
    Reference(Case, "visits/*/chosen/*/card", "card"),
    Reference(Case, "visits/*/wrong/*/card", "card"),
    Reference(Case, "visits/*/screen/set", "screening set"),
    Reference(CourseFile, "lessons/*/file", "lesson"),
    Reference(CourseFile, "lessons/*/objectives/*", "objective"),
    Reference(CourseFile, "practice/*/cases/*", "case"),
    Reference(CourseFile, "tests/*/cases/*", "case"),
    Reference(CourseFile, "tests/*/questions/*", "question"),
    Reference(CourseFile, "tests/*/plan/*/objective", "objective"),
    Reference(CourseFile, "requirements/test", "test"),
    Reference(CourseFile, "requirements/stations/*", "station"),
    Reference(CourseFile, "agenda/*/objectives/*", "objective"),
    Reference(CourseFile, "boards/*", "board"),
    Reference(CourseFile, "objectives/*/references/*", "source"),
    Reference(CourseFile, "positions/@", "contested point"),
    Reference(CourseFile, "references/*", "source"),
    Reference(Station, "case", "case"),
    Reference(Station, "objectives/*", "objective"),
    Reference(Station, "criteria/*/objectives/*", "objective"),
    Reference(AuthorQuestion, "objective", "objective"),
    Reference(AuthorQuestion, "source/*", "source"),
    Reference(Card, "baseline/*/source/*", "source"),
    Reference(Rule, "source/*", "source"),
    Reference(Rule, "options/*/cards/*", "card"),
    Reference(Rule, "options/*/groups/*", "group"),
    Reference(FactBook, "facts/*/excludes/*", "fact"),
    Reference(ScreeningBook, "sets/*/covers/*", "fact"),
    Reference(ScreeningBook, "sets/*/includes/*", "screening set"),
    Reference(SeverityBook, "tables/*/measure", "fact"),
    Reference(SeverityBook, "tables/*/recalled", "fact"),
    Reference(SeverityBook, "tables/*/source/*", "source"),
    Reference(WordingBook, "source/*", "source"),
    Reference(WordingBook, "thresholds/*/source/*", "source"),
    Reference(PhaseBook, "source/*", "source"),
    Reference(PhaseBook, "clocks/*/source/*", "source"),
    Reference(PhaseBook, "signs/*/source/*", "source"),
    Reference(PhaseBook, "doubt/*/source/*", "source"),
)


def unknown_names(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every name that is the name of nothing."""
    for reference in REFERENCES:
        for written in shelf.of(reference.model):
            for path, name in select(written.value, reference.pattern):
                if isinstance(name, str) and not shelf.knows(reference.what, _bare(reference, name)):
                    yield _unknown(shelf, reference, written, path, name)


def _bare(reference: Reference, name: str) -> str:
    return name.removesuffix(".md") if reference.what == "lesson" else name


def _unknown(shelf: Shelf, reference: Reference, written: Written, path: Path, name: str) -> Diagnostic:
    remedy = suggest(
        name, shelf.names[reference.what], f"There is no {reference.what} yet: add it, or remove this."
    )
    check = f"{reference.what.replace(' ', '_')}_unknown"
    message = f"There is no {reference.what} {quoted(name)}."
    return written.fault(check, path, (message, remedy), key=reference.pattern.endswith(KEY))
