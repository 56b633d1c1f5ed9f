"""Names of files in a course folder that another system could not keep, or would take for one."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

from builder.diagnostic import Diagnostic, Related
from builder.model.course import CourseFile
from builder.model.file_name import folded, is_reserved, unkept
from builder.place import Place
from builder.read.folder import BUILT, is_hidden
from builder.read.nearest import quoted
from builder.read.select import select
from builder.read.shelf import Shelf

_KEPT = "Give it another name, of letters, digits, - and _, and change it wherever it is named."


def names_not_kept(root: Path) -> Iterator[Diagnostic]:
    """Every file and folder of a course that Windows cannot keep, or keeps as the same file as another."""
    for folder, below, files in os.walk(root):
        inside = Path(folder).relative_to(root)
        below[:] = sorted(one for one in below if not _passed_over(inside, one))
        first: dict[str, str] = {}
        for name in sorted((*below, *(one for one in files if not is_hidden(one)))):
            file = (inside / name).as_posix() + ("/" if name in below else "")
            yield from _one_name(name, file, first.setdefault(folded(name), file))


def pages_kept(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every test whose page would have a name that Windows cannot keep."""
    for written in shelf.of(CourseFile):
        for path, name in select(written.value, "tests/*/id"):
            if isinstance(name, str) and is_reserved(name):
                words = f"Windows can keep no page called {quoted(name)}.", "Choose another id."
                yield written.fault("name_not_kept", path, words)


def _passed_over(inside: Path, name: str) -> bool:
    return is_hidden(name) or (inside == Path() and name in BUILT)


def _one_name(name: str, file: str, first: str) -> Iterator[Diagnostic]:
    place = Place(file)
    if why := unkept(name):
        message = f"Windows can keep no file or folder called {quoted(name)}: {why}."
        yield Diagnostic("name_not_kept", "error", place, message, _KEPT)
    if first != file:
        message = f"On Windows and macOS this and {quoted(first)} are one and the same file."
        related = (Related(Place(first), "The other one."),)
        yield Diagnostic("name_in_two_cases", "error", place, message, _KEPT, related=related)
