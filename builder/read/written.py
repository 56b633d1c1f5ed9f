"""One file as written: its plain data with places, and the noun it makes if it makes one."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path as FilePath
from typing import TypeVar

from builder.diagnostic import Diagnostic, Level, Related
from builder.disk import read_bytes
from builder.doors.shape import pour
from builder.doors.text import LIMIT
from builder.doors.yaml import read_yaml
from builder.fault import Fault
from builder.model.noun import Noun
from builder.place import Path, Place, Places
from builder.read.misfit import in_plain_words

N = TypeVar("N", bound=Noun)


@dataclass(frozen=True)
class Written:
    """The plain data of one file; `whole` is False where it could not be read to its end."""

    file: str
    value: object
    places: Places
    found: tuple[Diagnostic, ...]
    whole: bool

    @property
    def stem(self) -> str:
        """The file's name without folder and ending."""
        return self.file.rpartition("/")[2].partition(".")[0]

    @property
    def id(self) -> str:
        """The id written in it, or else the one its name promises."""
        own = self.value.get("id") if isinstance(self.value, dict) else None
        return own if isinstance(own, str) else self.stem

    def at(self, path: Path, *, key: bool = False) -> Place:
        """The place of a value, or of its key."""
        return self.places.of_key(path) if key else self.places.of(path)

    def fault(
        self, check: str, path: Path, words: tuple[str, str], *, key: bool = False, level: Level = "error"
    ) -> Diagnostic:
        """A Diagnostic about the value at `path`, or about its key; `words` are message and remedy."""
        return Diagnostic(check, level, self.at(path, key=key), *words, path=path)

    def beside(self, fault: Diagnostic, place: Place, message: str) -> Diagnostic:
        """The Diagnostic with another place that belongs to it."""
        return Diagnostic(
            fault.check, fault.level, fault.place, fault.message, fault.remedy, fault.path, fault.rules,
            (*fault.related, Related(place, message)),
        )  # fmt: skip


@dataclass(frozen=True)
class Entry:
    """One file and what it is: `noun` is None where the file does not make one."""

    model: type[Noun]
    written: Written
    noun: Noun | None
    found: tuple[Diagnostic, ...]


ReadEntry = Callable[[type[Noun], FilePath, str], Entry]


def read_written(path: FilePath, file: str) -> Written:
    """Read one YAML file, shown under the name `file`; what cannot be read is a Diagnostic too."""
    try:
        data = read_bytes(path, LIMIT + 1)
    except Fault as fault:
        place = Place(file)
        found = Diagnostic("file_unreadable", "error", place, fault.message, fault.remedy)
        return Written(file, None, Places(place), (found,), whole=False)
    return as_written(data, file)


def as_written(data: bytes, file: str) -> Written:
    """The bytes of one YAML file as plain data with places."""
    parsed = read_yaml(data, file)
    return Written(file, parsed.value, parsed.places, parsed.found, parsed.whole)


def as_entry(model: type[Noun], written: Written) -> Entry:
    """What a written file is, with all that keeps it from being so."""
    if not written.whole:
        return Entry(model, written, None, written.found)
    noun, misfits = pour(model, written.value)
    faults = tuple(_not_said_before(in_plain_words(model, misfits, written.places), written.found))
    return Entry(model, written, noun, (*written.found, *faults))


def read_entry(model: type[Noun], path: FilePath, file: str) -> Entry:
    """One YAML file and what it is."""
    return as_entry(model, read_written(path, file))


def _not_said_before(faults: Iterator[Diagnostic], said: tuple[Diagnostic, ...]) -> Iterator[Diagnostic]:
    places = {one.place for one in said}
    return (one for one in faults if one.place not in places)
