"""One class with everything that is to fix in it, and what of that was accepted."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from builder.check.accept import Accepted, accept
from builder.check.show import as_json, as_text
from builder.diagnostic import Diagnostic
from builder.flow.kinds import LEVELS
from builder.model.code import tidy
from builder.model.library import Course
from builder.model.records import ClassFolder
from builder.read.nearest import suggest
from builder.read.taught import ClassReading, read_class


@dataclass(frozen=True)
class ClassTold:
    """What was read of a class, and what is to fix in it."""

    reading: ClassReading
    to_fix: tuple[Diagnostic, ...]

    @property
    def sound(self) -> bool:
        """Whether it can be used: nothing is left that must be mended first."""
        return self.reading.folder is not None and all(one.level != "error" for one in self.to_fix)

    @property
    def folder(self) -> ClassFolder | None:
        """The class, if its files make one."""
        return self.reading.folder

    @property
    def left(self) -> tuple[str, ...]:
        """A line that says how much is still to be looked at; none where nothing is."""
        count = sum(not one.accepted for one in self.to_fix)
        said = f"Still to look at in the files of this class: {count}. Run check with --class."
        return (said,) if count else ()

    def text(self, *, width: int = 80, colour: bool = False) -> str:
        """What is to fix, as printed on a terminal."""
        return as_text(self.to_fix, self.reading.places, width=width, colour=colour)

    def json(self) -> dict[str, Any]:
        """What is to fix, in the shape `caseloom/check/1`."""
        return as_json(self.to_fix)


def told_class(place: Path, course: Course) -> ClassTold:
    """One class of a course, its own comments and its list of what is accepted heard."""
    reading = read_class(place, course)
    of_rows = tuple(_of_rows(reading, f"classes/{place.name}"))
    return ClassTold(reading, accept(reading.found, reading.places, LEVELS, (), suggest, of_rows))


def _of_rows(reading: ClassReading, before: str) -> Iterator[Accepted]:
    """What `class.yml` accepts in rows of its sheets."""
    listed = reading.folder.taught.accepted if reading.folder else ()
    for at, one in enumerate(listed):
        file, code = f"{before}/{one.file}", tidy(one.code)
        rows = frozenset((file, row) for row, codes in enumerate(reading.rows[file]) if code in codes)
        place = reading.places[f"{before}/class.yml"].of(("accepted", at))
        yield Accepted(one.check, one.because, place, rows=rows)
