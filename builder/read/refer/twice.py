"""Ids that stand twice where each may stand once: in one list, or in two files of one sort."""

from __future__ import annotations

from collections.abc import Iterator

from builder.diagnostic import Diagnostic
from builder.model.case import Case
from builder.model.course import CourseFile
from builder.model.noun import Noun
from builder.model.question import AuthorQuestion
from builder.model.station import Station
from builder.model.tables import PhaseBook
from builder.place import Path
from builder.read.nearest import quoted
from builder.read.select import select
from builder.read.shelf import Shelf
from builder.read.written import Written

ONCE_IN_A_LIST: tuple[tuple[type[Noun], str], ...] = (
    (Case, "visits/*/id"),
    (CourseFile, "objectives/*/id"),
    (CourseFile, "practice/*/id"),
    (CourseFile, "tests/*/id"),
    (CourseFile, "lessons/*/file"),
    (Station, "criteria/*/id"),
    (Station, "automatic_fails/*/id"),
    (AuthorQuestion, "order/steps/*/id"),
    (AuthorQuestion, "text/criteria/*/id"),
    (PhaseBook, "signs/*/id"),
    (PhaseBook, "doubt/*/id"),
)


def ids_twice(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every id that was already given, with the place where it was given first."""
    for model, pattern in ONCE_IN_A_LIST:
        for written in shelf.of(model):
            yield from _again((written, path, value) for path, value in select(written.value, pattern))
    for model in dict.fromkeys(entry.model for entry in shelf.entries):
        yield from _again(
            (written, ("id",), written.id)
            for written in shelf.of(model)
            if isinstance(written.value, dict) and "id" in written.value
        )


def _again(given: Iterator[tuple[Written, Path, object]]) -> Iterator[Diagnostic]:
    first: dict[str, tuple[Written, Path]] = {}
    for written, path, value in given:
        if not isinstance(value, str):
            continue
        if value in first:
            words = f"The id {quoted(value)} is already taken.", "Choose another for one of the two."
            other, at = first[value]
            yield written.beside(written.fault("id_twice", path, words), other.at(at), "First given here.")
        first.setdefault(value, (written, path))
