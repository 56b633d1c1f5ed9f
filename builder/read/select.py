"""Values picked out of plain data by a pattern, whatever else is wrong with the data."""

from __future__ import annotations

from collections.abc import Iterator

from builder.place import Path, Step

ANY = "*"
KEY = "@"


def select(data: object, pattern: str) -> Iterator[tuple[Path, object]]:
    """Every value whose path fits, such as `visits/*/title`; `*` is any step, `@` each key as a value."""
    yield from _select(data, tuple(pattern.split("/")) if pattern else (), ())


def _select(data: object, pattern: tuple[str, ...], path: Path) -> Iterator[tuple[Path, object]]:
    if not pattern:
        yield path, data
        return
    wanted, rest = pattern[0], pattern[1:]
    if wanted == KEY:
        yield from (((*path, key), key) for key in data) if isinstance(data, dict) else ()
        return
    for step, value in _steps(data):
        if wanted in (ANY, step):
            yield from _select(value, rest, (*path, step))


def _steps(data: object) -> Iterator[tuple[Step, object]]:
    if isinstance(data, dict):
        yield from data.items()
    elif isinstance(data, list):
        yield from enumerate(data)
