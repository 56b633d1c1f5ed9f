"""The gate before a check: where no file has changed, what was found the last time is said again."""

from __future__ import annotations

import json
import os
from collections.abc import Iterator, Mapping
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

from builder.check.show import as_json, as_text
from builder.diagnostic import Diagnostic, Related
from builder.disk import read_bytes, shipped
from builder.doors.cache import Cache, digest, open_cache
from builder.doors.text import LIMIT, decode
from builder.doors.tool import tool_fingerprint
from builder.fault import Fault
from builder.place import Place, Places

SLOT = "gate/check"
READ = (".yml", ".md", ".csv", ".vtt", ".json")
BUILT = ("out", "private")
SCHEMAS = Path(".caseloom") / "schema"  # a check brings them up to date


@dataclass(frozen=True)
class Told:
    """What a check found, without the course it was found in."""

    to_fix: tuple[Diagnostic, ...]
    places: Mapping[str, Places]

    @property
    def sound(self) -> bool:
        """Whether nothing is left that must be fixed before building."""
        return all(one.level != "error" for one in self.to_fix)

    def text(self, *, width: int, colour: bool) -> str:
        """What is to fix, as printed on a terminal."""
        return as_text(self.to_fix, self.places, width=width, colour=colour)

    def json(self) -> dict[str, Any]:
        """What is to fix, in the shape `caseloom/check/1`."""
        return as_json(self.to_fix)


def cache_of(folder: Path, home: Path) -> Cache:
    """The cache of a course, under the seal of whoever works here."""
    return open_cache(folder, home)


def gate_key(folder: Path) -> str:
    """The fingerprint of every byte that a check can read, and of the tool."""
    parts: list[str | bytes] = [tool_fingerprint()]
    for root in (folder, folder / SCHEMAS, shipped("content"), shipped("site_config.yml")):
        parts += [root.name, *(_files(root) if root.is_dir() else (_said_of(root),))]
    return digest(*parts)


def recall(folder: Path, cache: Cache, key: str) -> Told | None:
    """What was found in a folder with exactly these files; None where it is not known."""
    kept = cache.get(SLOT, key)
    if kept is None:
        return None
    try:
        found = tuple(_diagnostic(one) for one in json.loads(kept))
    except (ValueError, TypeError, KeyError):
        return None
    return Told(found, _Lines(folder))


def remember(folder: Path, cache: Cache, key: str, found: tuple[Diagnostic, ...]) -> None:
    """Keep what was found, unless a file was saved while it was looked for."""
    if gate_key(folder) == key:
        cache.put(SLOT, key, json.dumps([asdict(one) for one in found]).encode("utf-8"))


def _files(root: Path) -> Iterator[str | bytes]:
    """Names of all, bytes of what is read, and of the rest how large and how new."""
    seen = set()
    for folder, below, names in os.walk(root, followlinks=True):
        below[:] = sorted(one for one in below if not _passed_over(Path(folder), one, root))
        real = os.path.realpath(folder)
        if real in seen:
            below.clear()
            continue
        seen.add(real)
        yield f"{os.path.relpath(folder, root)}: {below}"
        for name in sorted(one for one in names if not one.startswith(".")):
            yield name
            yield _said_of(Path(folder) / name)


def _passed_over(folder: Path, name: str, root: Path) -> bool:
    return name.startswith(".") or (folder == root and name in BUILT)


def _said_of(path: Path) -> str | bytes:
    try:
        if path.suffix in READ:
            return path.read_bytes()
        about = path.stat()
    except OSError as error:
        return f"unreadable: {error.errno}"
    return f"{about.st_size} {about.st_mtime_ns}"


def _diagnostic(kept: dict[str, Any]) -> Diagnostic:
    related = tuple(Related(Place(**one["place"]), one["message"]) for one in kept["related"])
    plain = kept | {"place": Place(**kept["place"]), "related": related}
    return Diagnostic(**(plain | {"path": tuple(kept["path"]), "rules": tuple(kept["rules"])}))


class _Lines(Mapping[str, Places]):
    """The lines of a file, read when a fault in it is shown."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    def __getitem__(self, file: str) -> Places:
        path = self._path(file)
        try:
            lines = decode(read_bytes(path, LIMIT + 1), file).lines if path.is_file() else None
        except Fault:
            lines = None
        if lines is None:
            raise KeyError(file)
        return Places(Place(file), lines=lines)

    def __iter__(self) -> Iterator[str]:
        return iter(())

    def __len__(self) -> int:
        return 0

    def _path(self, file: str) -> Path:
        if file.startswith("content/"):
            return shipped("content") / file.removeprefix("content/")
        own = self._folder / file
        return own if own.exists() or file != "site_config.yml" else shipped(file)
