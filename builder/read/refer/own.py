"""Small agreements between files that no table of names can hold."""

from __future__ import annotations

from collections.abc import Iterator

from builder.diagnostic import Diagnostic
from builder.model.case import Case
from builder.model.course import CourseFile
from builder.model.fact import FactBook, ScreeningBook
from builder.model.station import Station
from builder.read.nearest import quoted, suggest
from builder.read.select import select
from builder.read.shelf import Shelf

_WORDS_OF_CONDITIONS = frozenset({"all", "any", "not", "recorded"})


def file_names(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every file whose name is not its id."""
    for entry in shelf.entries:
        written = entry.written
        if "/" in written.file and isinstance(written.value, dict) and written.id != written.stem:
            message = f"The file is called `{written.stem}`, but its id is {quoted(written.id)}."
            remedy = f"Write `id: {written.stem}`."
            if written.id.isidentifier():
                remedy = f"Rename the file to {quoted(written.id + '.yml')}, or write `id: {written.stem}`."
            yield written.fault("id_not_file_name", ("id",), (message, remedy))


def station_visits(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every station whose visit is none of its case's."""
    for station in shelf.of(Station):
        case = next((one for one in shelf.of(Case) if one.id == _text(station.value, "case")), None)
        visit = _text(station.value, "visit")
        known = [str(value) for _, value in select(case.value, "visits/*/id")] if case else []
        if known and visit and visit not in known:
            message = f"The case `{case.id if case else ''}` has no visit {quoted(visit)}."
            yield station.fault("visit_unknown", ("visit",), (message, suggest(visit, known)))


def screened_facts(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every exception of a screen that its set does not ask, and every set that asks no yes or no."""
    book = shelf.noun(ScreeningBook)
    for case in shelf.of(Case) if book else ():
        for path, screen in select(case.value, "visits/*/screen"):
            covered = book.covered_by(_text(screen, "set")) if book else ()
            for at, name in select(screen, "all_no_except/@"):
                if covered and name in shelf.facts and name not in covered:
                    words = f"The set does not ask for {quoted(name)}.", "Record it under `findings`."
                    yield case.fault("not_screened", (*path, *at), words, key=True)
    for written in shelf.of(ScreeningBook):
        for path, name in select(written.value, "sets/*/covers/*"):
            if (fact := shelf.facts.get(str(name))) and fact.kind != "yes_no":
                words = (
                    f"{quoted(name)} is not answered by yes or no.",
                    "Record it by itself; remove it here.",
                )
                yield written.fault("screen_not_yes_no", path, words)


def fact_names(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every fact whose name a condition would take for a word of its own."""
    for written in shelf.of(FactBook):
        for pattern in ("facts/@", "written/@"):
            for path, name in select(written.value, pattern):
                if name in _WORDS_OF_CONDITIONS:
                    words = f"{quoted(name)} is a word of conditions.", "Choose another name."
                    yield written.fault("fact_name_reserved", path, words, key=True)


def lessons_listed(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every lesson that no line of `course.yml` leads to."""
    for written in shelf.of(CourseFile) if CourseFile not in shelf.unsure else ():
        listed = {str(value).removesuffix(".md") for _, value in select(written.value, "lessons/*/file")}
        for stem in sorted(shelf.lessons.keys() - listed):
            message = f"The lesson `lessons/{stem}.md` is not in the list of lessons."
            words = message, "List it, or move the file away."
            yield written.fault("lesson_not_listed", ("lessons",), words, key=True, level="advice")


def _text(data: object, key: str) -> str:
    value = data.get(key) if isinstance(data, dict) else None
    return value if isinstance(value, str) else ""
