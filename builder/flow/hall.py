"""A class held open in the hall: its course, its people as they stand now, its tray, and the built site."""

from __future__ import annotations

import secrets
from collections.abc import Iterator
from pathlib import Path
from threading import Lock
from zoneinfo import ZoneInfo

from builder.collect.tray import Due, Tray, TrayFull
from builder.disk import keep_bytes
from builder.fault import Fault
from builder.flow.class_told import told_class
from builder.flow.records import course_and_folder
from builder.model.arrival import Arrival
from builder.model.library import Course
from builder.model.records import ClassFolder
from builder.render.address import START, of_test, published
from builder.render.wording import Say, speaker

__all__ = ["OpenClass", "TrayFull", "open_class"]
SEAL = ".hall_secret"
ASIDE = "set_aside"
FOLLOWED = ("roster.csv", "class.yml")


class OpenClass:
    """One class while it is held. Nothing here knows a key, or where keys lie."""

    def __init__(self, folder: Path, course: Course, publish: Path) -> None:
        self.folder, self.course, self.publish = folder, course, publish
        self.say: Say = speaker(course.content.words)
        self._lock, self._stamp = Lock(), self._looked()
        self.taught, self.sound = self._read(None)
        self.zone = ZoneInfo(self.taught.taught.zone)
        self._tray = Tray(folder / "answers", folder / ASIDE, _secret(folder / SEAL), self.zone)
        self._tray.look_again(self._due())

    def take(self, data: bytes) -> Arrival:
        """Keep a sheet; one that is not expected is looked at again where the roster has changed since."""
        arrival = self._tray.take(data, self._due())
        if not arrival.taken:
            self.refresh()
            arrival = self._tray.take(data, self._due())
        return arrival

    def standing(self) -> Iterator[Arrival]:
        """Every sheet that has come so far, by whatever way."""
        return self._tray.standing()

    def aside(self) -> list[Arrival]:
        """Every sheet that was set aside."""
        return list(self._tray.aside())

    def refresh(self) -> list[Arrival]:
        """Follow the roster where it was saved since; what was set aside and is expected now is taken."""
        with self._lock:
            stamp = self._looked()
            if stamp == self._stamp:
                return []
            self._stamp = stamp
            self.taught, self.sound = self._read(self.taught)
            return self._tray.look_again(self._due())

    def starts(self) -> dict[str, str]:
        """Where phones may arrive: the address in the site by the words for it; the tests first."""
        tests = {one.title: published(of_test(one.id)) for one in self.course.file.tests}
        return {**tests, self.course.file.title: published(START)}

    def _read(self, before: ClassFolder | None) -> tuple[ClassFolder, bool]:
        """The class as far as it can be read, and whether nothing is left to mend in it.

        Phones do not wait for that: a row with an error is left out until it is mended.
        """
        told = told_class(self.folder, self.course)
        found = told.folder or before
        if found is None:
            raise Fault(f"The class {self.folder.name} has errors to fix:", told.text())
        return found, told.sound

    def _due(self) -> Due:
        tests = frozenset(one.id for one in self.course.file.tests)
        return Due(self.taught.taught.id, self.taught.owners.keys(), tests)

    def _looked(self) -> tuple[tuple[int, int], ...]:
        paths = [self.folder / name for name in FOLLOWED]
        return tuple((one.stat().st_mtime_ns, one.stat().st_size) for one in paths if one.exists())


def open_class(folder: Path, klass: str, publish: Path) -> OpenClass:
    """Open a class of a course with its built student site; a Fault where one of them cannot be used."""
    if not (publish / "index.html").is_file():
        raise Fault("The student site is not built yet.", f"Run build on {folder}, or name where with --out.")
    course, place = course_and_folder(folder, klass)
    return OpenClass(place, course, publish.resolve())


def _secret(path: Path) -> bytes:
    """What receipts of this class are made with; made once, readable by nobody else."""
    if not path.exists():
        keep_bytes(path, secrets.token_hex(32).encode("ascii"))
        path.chmod(0o600)
    return path.read_bytes()
