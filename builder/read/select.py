"""Values picked out of plain data by a pattern, whatever else is wrong with the data."""

from __future__ import annotations

from builder.place import Path

ANY = "*"
KEY = "@"


def select(data: object, pattern: str) -> list[tuple[Path, object]]:
    """Every value whose path fits, such as `visits/*/title`; `*` is any step, `@` each key as a value."""
    found: list[tuple[Path, object]] = [((), data)]
    for step in pattern.split("/") if pattern else ():
        found = [one for path, value in found for one in _below(path, value, step)]
    return found


def _below(path: Path, data: object, wanted: str) -> list[tuple[Path, object]]:
    if isinstance(data, list):
        return [((*path, at), value) for at, value in enumerate(data)] if wanted == ANY else []
    if not isinstance(data, dict):
        return []
    if wanted == ANY:
        return [((*path, key), value) for key, value in data.items()]
    if wanted == KEY:
        return [((*path, key), key) for key in data]
    return [((*path, wanted), data[wanted])] if wanted in data else []
