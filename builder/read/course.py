"""Reads a course and the content it rests on: nouns with places, and every fault of every file at once."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path

from builder.diagnostic import Diagnostic, in_order
from builder.model.course import CourseFile, SiteConfig
from builder.model.library import Course
from builder.model.review import ReviewBook
from builder.model.wording import WordingBook
from builder.model.words import ENGLISH
from builder.place import Places
from builder.read.assemble import assemble
from builder.read.films import read_films
from builder.read.folder import (
    BOOKS,
    COURSE,
    LESSONS,
    MEDIA,
    OWN,
    REVIEWS,
    SHARED,
    SITE,
    WORDING,
    files_in,
    strays,
)
from builder.read.lessons import read_lesson
from builder.read.portable import names_not_kept
from builder.read.refer.refer import refer
from builder.read.shelf import Shelf
from builder.read.words import read_words
from builder.read.written import Entry, ReadEntry, Written, read_entry

CONTENT = "content/"


@dataclass(frozen=True)
class Reading:
    """What came of reading; `course` is None where it could not be put together at all."""

    course: Course | None
    found: list[Diagnostic]
    places: dict[str, Places]


def read_course(
    folder: Path, content: Path, site: Path | None = None
) -> tuple[Course | None, list[Diagnostic]]:
    """A course with everything to fix in its files, sorted by place; cases with errors are left out."""
    reading = read_all(folder, content, site)
    return reading.course, reading.found


def read_all(folder: Path, content: Path, site: Path | None = None, read: ReadEntry = read_entry) -> Reading:
    """As `read_course`, with the places and lines of every file, whether or not there is a course.

    `site` is the look that holds where the course has none of its own; else the one beside the content.
    `read` may know files from before.
    """
    shelf = shelf_of(folder, content, site or content.parent / SITE, read)
    file = shelf.noun(CourseFile)
    words = read_words(content, folder, file.language if file else ENGLISH, COURSE)
    found = [*refer(shelf), *words.found, *strays(folder), *names_not_kept(folder)]
    found += [fault for lesson in shelf.lessons.values() for fault in lesson.found]
    places = words.places | {one.written.file: one.written.places for one in shelf.entries}
    places |= {one.file: one.places for one in shelf.lessons.values()}
    media = frozenset(one.file for one in files_in(folder, MEDIA, ""))
    films = read_films(folder, media)
    found += films.found
    places |= films.places
    course = assemble(shelf, words.texts, found, places)
    if course is not None:
        course = replace(course, media=media, films=films.films)
    return Reading(course, in_order(found), places)


def shelf_of(folder: Path, content: Path, site: Path, read: ReadEntry = read_entry) -> Shelf:
    """Every file of a course and of the content, each by itself."""
    look = folder / SITE if (folder / SITE).is_file() else site
    singles, books = _singles(folder, look, read), _books(content, read)
    return Shelf((*singles, *books, *_shared(content, read), *_own(folder, read)), _lessons(folder))


def _singles(folder: Path, look: Path, read: ReadEntry) -> Iterator[Entry]:
    yield read(CourseFile, folder / COURSE, COURSE)
    yield read(SiteConfig, look, SITE)
    if (folder / REVIEWS).is_file():
        yield read(ReviewBook, folder / REVIEWS, REVIEWS)


def _books(content: Path, read: ReadEntry) -> Iterator[Entry]:
    for name, model in BOOKS.items():
        yield read(model, content / name, CONTENT + name)
    if (content / WORDING).is_file():
        yield read(WordingBook, content / WORDING, CONTENT + WORDING)


def _shared(content: Path, read: ReadEntry) -> Iterator[Entry]:
    for name, model in SHARED.items():
        for one in files_in(content, name, ".yml", CONTENT):
            yield read(model, one.path, one.file)


def _own(folder: Path, read: ReadEntry) -> Iterator[Entry]:
    for name, model in OWN.items():
        for one in files_in(folder, name, ".yml"):
            yield read(model, one.path, one.file)


def _lessons(folder: Path) -> dict[str, Written]:
    lessons = (read_lesson(one.path, one.file) for one in files_in(folder, LESSONS, ".md"))
    return {lesson.stem: lesson for lesson in lessons}
