"""The records side: a class collected, graded, certified and analysed, each from the record."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from builder.analyse.analyse import analyse_class
from builder.analyse.report import lines as analysis_lines
from builder.analyse.report import write_report
from builder.certify.certify import certify_class
from builder.certify.lists import write_lists
from builder.certify.show import lines as issued_lines
from builder.collect.collect import collect_class
from builder.collect.show import lines as collected_lines
from builder.disk import shipped, write_bytes
from builder.doors.sheet import write_sheet
from builder.doors.store.opening import Store, open_store
from builder.fault import Fault
from builder.flow.class_told import ClassTold, told_class
from builder.grade.grade import grade_class
from builder.grade.show import lines as graded_lines
from builder.grade.waiting import ANSWER, COLUMNS, LEVEL
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.paper import PublishedTest
from builder.model.records import ClassFolder, Terms
from builder.read.course import read_course
from builder.read.nearest import suggest


@dataclass(frozen=True)
class Desk:
    """One class laid out for the records side, with where its keys, its record and its lists lie.

    `left` says that something in its files is still to be looked at.
    """

    course: Course
    folder: Path
    taught: ClassFolder
    private: Path
    records: Path
    left: tuple[str, ...] = ()

    @property
    def terms(self) -> Terms:
        """What a participant of the course must meet."""
        boards = tuple(self.course.content.boards[name] for name in self.course.file.boards)
        return Terms(course=self.course.file, boards=boards, stations=tuple(self.course.stations.values()))

    @property
    def lists(self) -> Path:
        """Where the lists and reports of this class are written."""
        return self.private / "classes" / self.taught.taught.id

    @contextmanager
    def opened(self, now: datetime) -> Iterator[Store]:
        """The record, opened."""
        with open_store(self.records, now) as store:
            yield store


def lay_out(folder: Path, klass: str, private: Path, records: Path) -> Desk:
    """Read a course and one of its classes; a Fault where either cannot be used as it stands."""
    course, place = course_and_folder(folder, klass)
    told = told_class(place, course)
    return Desk(course, folder, _usable(told, klass), private, records, told.left)


def course_and_folder(folder: Path, klass: str) -> tuple[Course, Path]:
    """A course and the folder of one of its classes; a Fault where either is not there."""
    course, _ = read_course(folder, shipped("content"), shipped("site_config.yml"))
    if course is None:
        raise Fault("The course cannot be read.", f"Run check on {folder} and mend what it names.")
    place = folder / "classes" / klass
    if not place.is_dir():
        known = [one.name for one in (folder / "classes").glob("*") if one.is_dir()]
        raise Fault(f"There is no class `{klass}`.", suggest(klass, known, "There is no class yet."))
    return course, place


def _usable(told: ClassTold, name: str) -> ClassFolder:
    if told.folder is None or not told.sound:
        raise Fault(f"The class {name} has errors to fix:", told.text())
    return told.folder


def key_rings(private: Path) -> tuple[KeyRing, ...]:
    """Every key ring that was built, old editions too; a Fault where there is none."""
    found = sorted((private / "keys").glob("*.json"))
    if not found:
        raise Fault("No keys were found.", "Build the course first, or name with --out where it was built.")
    return tuple(KeyRing.model_validate_json(path.read_bytes()) for path in found)


def papers(private: Path) -> tuple[PublishedTest, ...]:
    """Every published test that was built, old editions too."""
    found = sorted((private / "papers").glob("*.json"))
    return tuple(PublishedTest.model_validate_json(path.read_bytes()) for path in found)


def collect(desk: Desk) -> tuple[list[str], bool]:
    """Take the inbox into the record; says what was done, and whether every file could be taken."""
    now, rings = datetime.now(UTC), key_rings(desk.private)
    inbox = desk.folder / "classes" / desk.taught.taught.id / "answers"
    with desk.opened(now) as store:
        done = collect_class(store, desk.taught, inbox, rings, now)
    return [*collected_lines(done), *desk.left], not done.left


def grade(desk: Desk, *, write: bool = True) -> list[str]:
    """Decide about everybody; with `write` off, only say what would change."""
    now, rings = datetime.now(UTC), key_rings(desk.private)
    with desk.opened(now) as store:
        graded = grade_class(store, desk.terms, desk.taught, rings, now, write=write)
    return [*graded_lines(graded), *_to_mark(desk, graded.to_mark), *desk.left]


def _to_mark(desk: Desk, rows: Sequence[tuple[str, ...]]) -> list[str]:
    """Write the sheet by which written answers are marked, where any waits, and say what to do with it."""
    path = desk.lists / "to_mark.csv"
    if not rows:
        path.unlink(missing_ok=True)
        return []
    write_bytes(path, write_sheet(COLUMNS, rows))
    left = [row[:ANSWER] for row in rows if not row[LEVEL]]
    count, target = len(set(left)), f"classes/{desk.taught.taught.id}/marking.csv"
    return [
        f"Written: {path}",
        f"  Written answers that wait there: {count}, levels to be marked: {len(left)}.",
        f"  Fill in `level` and `by`, save it as {target}, and grade again.",
    ]


def certify(desk: Desk) -> list[str]:
    """Issue certificates, write the two lists, and say who was refused and why."""
    now = datetime.now(UTC)
    with desk.opened(now) as store:
        issued = certify_class(store, desk.terms, desk.taught, now)
    written = (f"Written: {path}" for path in write_lists(issued, desk.lists))
    return [*issued_lines(issued), *written, *desk.left]


def analyse(desk: Desk) -> list[str]:
    """Count what the class answered, and write the report."""
    rings = key_rings(desk.private)
    with desk.opened(datetime.now(UTC)) as store:
        found = analyse_class(store, desk.taught, rings, papers(desk.private))
    return [*analysis_lines(found), *(f"Written: {path}" for path in write_report(found, desk.lists))]
