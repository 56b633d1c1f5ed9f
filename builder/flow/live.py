"""A course that stays open: read again after every save, with the last good state kept beside the faults."""

from __future__ import annotations

import secrets
from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from threading import Lock
from typing import TypeVar

from builder.assess.papers import papers_and_keys
from builder.diagnostic import Diagnostic, in_order
from builder.disk import shipped
from builder.doors.cache import Cache, LayeredCache
from builder.fault import Fault
from builder.flow.fingerprints import fingerprints
from builder.flow.opened import judged_course
from builder.flow.partial import whole_enough
from builder.flow.sides import Laid, Planner, Tests
from builder.flow.worked import Judged, Worker
from builder.judge.judge import Judge
from builder.model.case import Case
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.paper import PublishedTest
from builder.model.site import SitePlan
from builder.place import Place, Places
from builder.read.again import Rereader
from builder.read.course import read_all
from builder.render.address import of_case, published
from builder.render.instructor_address import of_room

NO_EDITION = "preview"
BUILT = ("student", "instructor")
T = TypeVar("T", PublishedTest, KeyRing)


@dataclass(frozen=True)
class Shown:
    """What is to be seen now: both sites as far as they could be made, and all that is to fix.

    `behind`: what is shown is from before the last save, since that could not be made into pages; `held`:
    the pages of which alone that is true, by their name.
    """

    version: int = 0
    plans: tuple[SitePlan, SitePlan] | None = None
    to_fix: tuple[Diagnostic, ...] = ()
    places: dict[str, Places] | None = None
    behind: bool = False
    held: frozenset[str] = frozenset()


class Live:
    """One course folder held open. Nothing is written to it; tests are drawn by a secret in memory alone."""

    def __init__(self, folder: Path, cache: Cache) -> None:
        self._folder, self._cache = folder, LayeredCache(cache)
        self._secret = secrets.token_bytes(32)
        self._reader = Rereader()
        self._good: dict[str, Case] = {}
        self._laid: tuple[dict[str, Laid], dict[str, Laid]] = {}, {}
        self._lock = Lock()
        self.shown = Shown()

    def refresh(self) -> Shown:
        """Read the folder again and work out what has changed; whatever happens, something is shown."""
        with self._lock:
            before = self.shown
            try:
                now = self._looked(before)
            except Fault as fault:
                now = _behind(before, fault.message, fault.remedy)
            except Exception as error:  # noqa: BLE001 - a preview stays up whatever a half-written course does to it
                kind = type(error).__name__
                now = _behind(
                    before, f"The pages could not be made ({kind}).", "Run check, and mend what it names."
                )
            self.shown = replace(now, version=before.version + 1)
            return self.shown

    def media(self, name: str) -> Path | None:
        """A file that a page shows, where it lies now."""
        plans = self.shown.plans
        path = self._folder / name
        return path if plans and name in plans[0].media and path.is_file() else None

    def _looked(self, before: Shown) -> Shown:
        if not (self._folder / "course.yml").is_file():
            raise Fault("The folder holds no course.yml.", "Put it back, or end the preview.")
        reading = read_all(self._folder, shipped("content"), shipped("site_config.yml"), self._reader)
        if reading.course is None:
            return replace(before, to_fix=tuple(reading.found), places=reading.places, behind=True)
        opened = judged_course(reading, reading.course, self._cache)
        try:
            plans = self._planned(reading.course, opened.judged)
        except Fault as fault:
            also = _said(fault.message, fault.remedy)
            found = tuple(in_order([*opened.to_fix, also]))
            return replace(before, to_fix=found, places=opened.places, behind=True)
        held = [name for name in self._good if name not in reading.course.cases]
        pages = frozenset(published(at(name)) for name in held for at in (of_case, of_room))
        return Shown(0, plans, opened.to_fix, opened.places, held=pages)

    def _planned(self, read: Course, judged: Mapping[str, Judged]) -> tuple[SitePlan, SitePlan]:
        """Both sites; a case with a fault is shown as it last was, one that never was good is left out."""
        course = whole_enough(read, self._good, self._folder)
        prints = fingerprints(course)
        if course is not read:
            worker = Worker(course, Judge(course.content), prints, self._cache)
            judged = worker.told(worker.answered())
        self._good = dict(course.cases)
        drawn = papers_and_keys(course, judged, self._secret)
        tests = Tests(tuple(_unnamed(one) for one, _ in drawn), tuple(_unnamed(ring) for _, ring in drawn))
        planner = Planner(course, judged, prints, tests)
        before = [planner.unchanged(side, laid) for side, laid in zip(BUILT, self._laid, strict=True)]
        student, practice = planner.student(before[0])
        instructor = planner.instructor(before[1])
        self._laid = (
            {page.address: Laid(page, practice.get(page.address)) for page in student.pages},
            {page.address: Laid(page) for page in instructor.pages},
        )
        return student, instructor


def _unnamed(one: T) -> T:
    """A test or its keys under no edition: no answer sheet of a preview belongs to anything."""
    update = {name: NO_EDITION for name in ("edition", "key_edition") if hasattr(one, name)}
    return one.model_copy(update=update)


def _behind(before: Shown, message: str, remedy: str) -> Shown:
    return replace(before, to_fix=(_said(message, remedy),), behind=True)


def _said(message: str, remedy: str) -> Diagnostic:
    return Diagnostic("preview_behind", "error", Place("course.yml"), message, remedy)
