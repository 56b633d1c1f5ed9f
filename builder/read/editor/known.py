"""What the files of one course may name: facts with their values, and the ids of everything else."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from builder.model.course import CourseFile
from builder.model.fact import Fact
from builder.read.folder import BOOKS, COURSE, LESSONS, SHARED, files_in
from builder.read.shelf import Shelf
from builder.read.written import Entry, as_entry, read_written

STEMS = {"case": "cases", "question": "questions", "station": "stations"}


@dataclass(frozen=True)
class Known:
    """Facts and attributes, None where the declaration does not hold; names by what they are called."""

    facts: Mapping[str, Fact | None]
    attributes: Mapping[str, Fact | None]
    names: Mapping[str, tuple[str, ...]]


def known_in(content: Path, course: Path | None = None) -> Known:
    """All that the shipped content lets a file name, and what the files of a course add to it."""
    shelf = Shelf(tuple(_entries(content, course)))
    names = {what: tuple(sorted(found)) for what, found in shelf.names.items()}
    if course is not None:
        names |= {what: tuple(_stems(course, folder, ".yml")) for what, folder in STEMS.items()}
        names["lesson"] = tuple(f"{stem}.md" for stem in _stems(course, LESSONS, ".md"))
    return Known(shelf.facts, shelf.attributes, names)


def _entries(content: Path, course: Path | None) -> Iterator[Entry]:
    for name, model in BOOKS.items():
        yield as_entry(model, read_written(content / name, name))
    for root in (content, course) if course else (content,):
        for name, model in SHARED.items():
            for one in files_in(root, name, ".yml"):
                yield as_entry(model, read_written(one.path, one.file))
    if course is not None:
        yield as_entry(CourseFile, read_written(course / COURSE, COURSE))


def _stems(course: Path, folder: str, ending: str) -> list[str]:
    return [one.path.name.removesuffix(ending) for one in files_in(course, folder, ending)]
