"""Reads one class: its dates, roster, attendance and station sheets, with everything to fix in them."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError, available_timezones

from builder.diagnostic import Diagnostic, in_order
from builder.doors.sheet import Sheet
from builder.model.library import Course
from builder.model.marking import Marked
from builder.model.records import ClassFolder
from builder.model.station import StationSheet
from builder.model.taught import TaughtClass
from builder.place import Place, Places
from builder.read.attendance import COLUMNS, read_attendance
from builder.read.folder import Named, files_in
from builder.read.marking import read_marking
from builder.read.nearest import quoted, suggest
from builder.read.roster import codes_by_row, codes_in, read_roster
from builder.read.rows import read_rows
from builder.read.station_sheets import sheet_faults
from builder.read.written import Entry, as_entry, read_written


@dataclass(frozen=True)
class ClassReading:
    """What came of reading a class; `folder` is None where `class.yml` makes no class.

    `rows` holds, for each sheet, the personal codes that stand in each of its rows.
    """

    folder: ClassFolder | None
    found: list[Diagnostic]
    places: dict[str, Places]
    rows: dict[str, tuple[frozenset[str], ...]] = field(default_factory=dict)


def read_class(folder: Path, course: Course) -> ClassReading:
    """One class of a course, without its answer sheets; rows and sheets with errors are left out."""
    before = f"classes/{folder.name}/"
    entry = as_entry(TaughtClass, read_written(folder / "class.yml", f"{before}class.yml"))
    roster = read_rows(folder / "roster.csv", f"{before}roster.csv")
    attendance = _attendance(folder, before)
    sheets = tuple(
        as_entry(StationSheet, read_written(one.path, one.file)) for one in _sheets(folder, before)
    )
    people, found = read_roster(roster)
    found += [*entry.found, *_of_sheets(sheets, course, codes_in(roster))]
    zone, faults = _about_class(entry, folder.name, course)
    found += faults
    whole = None
    if isinstance(entry.noun, TaughtClass) and zone is not None:
        presences, faults = read_attendance(attendance, entry.noun, zone, codes_in(roster))
        found += faults
        markings, faults = _markings(folder, before, course, codes_in(roster))
        found += faults
        whole = ClassFolder(
            course=course.file.id,
            taught=entry.noun,
            participants=people,
            presences=presences,
            station_sheets=_sound(sheets, found),
            markings=markings,
        )
    places = {one.written.file: one.written.places for one in (entry, *sheets)}
    places |= {sheet.places.whole.file: sheet.places for sheet in (roster, attendance)}
    return ClassReading(whole, in_order(found), places, _codes(roster, attendance))


def _codes(*sheets: Sheet) -> dict[str, tuple[frozenset[str], ...]]:
    """The personal codes in each row of each sheet, by its file."""
    return {sheet.places.whole.file: codes_by_row(sheet) for sheet in sheets}


def _sheets(folder: Path, before: str) -> Iterator[Named]:
    return files_in(folder, "stations", ".yml", before)


def _attendance(folder: Path, before: str) -> Sheet:
    """The attendance as it stands; a class that was not held yet has none."""
    path, file = folder / "attendance.csv", f"{before}attendance.csv"
    return read_rows(path, file) if path.exists() else Sheet(COLUMNS, (), Places(Place(file)), ())


def _markings(
    folder: Path, before: str, course: Course, codes: Collection[str]
) -> tuple[tuple[Marked, ...], list[Diagnostic]]:
    """What was marked of written answers; a class without any has no such file."""
    path = folder / "marking.csv"
    if not path.exists():
        return (), []
    tests = [test.id for test in course.file.tests]
    return read_marking(read_rows(path, f"{before}marking.csv"), course.questions, tests, codes)


def _of_sheets(sheets: Iterable[Entry], course: Course, codes: Collection[str]) -> Iterator[Diagnostic]:
    stations = {**dict.fromkeys(course.file.requirements.stations), **course.stations}
    for sheet in sheets:
        yield from sheet_faults(sheet, stations, codes)


def _sound(sheets: Iterable[Entry], found: Iterable[Diagnostic]) -> tuple[StationSheet, ...]:
    faulty = {one.place.file for one in found if one.level == "error"}
    nouns = (one.noun for one in sheets if one.written.file not in faulty)
    return tuple(noun for noun in nouns if isinstance(noun, StationSheet))


def _about_class(entry: Entry, name: str, course: Course) -> tuple[ZoneInfo | None, list[Diagnostic]]:
    """The time zone of a class, and what of the class does not hold."""
    taught, written = entry.noun, entry.written
    if not isinstance(taught, TaughtClass):
        return None, []
    found: list[Diagnostic] = []
    if taught.id != name:
        words = f"The folder is called `{name}`, but the id is {quoted(taught.id)}.", "Make them the same."
        found.append(written.fault("id_not_file_name", ("id",), words))
    if list(taught.dates) != sorted(set(taught.dates)):
        words = "The dates are not in order, each once.", "Day 1 comes first."
        found.append(written.fault("dates_order", ("dates",), words))
    days = max((item.day for item in course.file.agenda), default=1)
    if days > len(taught.dates):
        words = f"The agenda has {days} days, this class {len(taught.dates)}.", "Give a date for each day."
        found.append(written.fault("class_days", ("dates",), words))
    zone = _zone(taught.zone)
    if zone is None:
        words = f"There is no time zone {quoted(taught.zone)}.", suggest(taught.zone, available_timezones())
        found.append(written.fault("zone_unknown", ("zone",), words))
    return zone, found


def _zone(name: str) -> ZoneInfo | None:
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return None
