"""The small sound course of the reading tests, with files put in its place."""

import shutil
from collections.abc import Mapping
from pathlib import Path

from builder.check.show import as_text
from builder.diagnostic import Diagnostic
from builder.place import Places
from builder.read.course import Reading, read_all
from builder.read.taught import read_class

BROKEN = Path(__file__).parents[1] / "broken"
BASE = BROKEN / "base"


def put(root: Path, files: Mapping[str, str | bytes] | None = None, *, over: Path | None = None) -> Path:
    """Copy the sound course to `root`, lay the files of another folder over it, then some by name."""
    shutil.copytree(BASE, root, dirs_exist_ok=True)
    if over is not None:
        shutil.copytree(over, root, dirs_exist_ok=True, ignore=shutil.ignore_patterns("expected.txt"))
    for name, data in (files or {}).items():
        path = root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data if isinstance(data, bytes) else data.encode("utf-8"))
    return root


def read(root: Path) -> Reading:
    """Read the course below `root`."""
    return read_all(root / "course", root / "content")


def changed(root: Path, name: str, old: str, new: str) -> Reading:
    """Read the sound course with one text in one file changed."""
    text = (BASE / name).read_text(encoding="utf-8")
    assert text.count(old) == 1
    return read(put(root, {name: text.replace(old, new)}))


def everything(root: Path) -> tuple[list[Diagnostic], dict[str, Places]]:
    """All that is to fix in the course and its classes, with the source lines."""
    reading = read(root)
    found, places = list(reading.found), dict(reading.places)
    for folder in sorted((root / "course" / "classes").iterdir()):
        if reading.course is not None:
            taught = read_class(folder, reading.course)
            found += taught.found
            places |= taught.places
    return found, places


def printed(root: Path) -> str:
    """What a person reads about the course below `root`, at 80 columns."""
    found, places = everything(root)
    return as_text(found, places, width=80) + "\n"


def checks(reading: Reading) -> list[tuple[str, str]]:
    """The name and file of everything found."""
    return [(one.check, one.place.file) for one in reading.found]
