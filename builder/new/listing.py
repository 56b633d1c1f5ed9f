"""Adds one line to a list of a course file, and leaves every other character as the author wrote it."""

from __future__ import annotations

from builder.doors.yaml import Parsed, read_yaml
from builder.place import Path

FILE = "course.yml"


def listed(data: bytes, path: Path, entry: str) -> bytes | None:
    """The file with an entry added at the end of the list at `path`; None where that is not sure to hold."""
    text = data.decode("utf-8", errors="replace")
    ends = "\r\n" if "\r\n" in text else "\n"
    plain = text.replace("\r\n", "\n")
    before = read_yaml(plain.encode("utf-8"), FILE)
    new = _added(plain.removeprefix("\ufeff"), before, path, entry)
    if new is None or before.found or not before.whole:
        return None
    after = read_yaml(new.encode("utf-8"), FILE)
    if after.found or after.value != _expected(before.value, path, _meant(entry)):
        return None
    mark = "\ufeff" if plain.startswith("\ufeff") else ""
    return (mark + new.replace("\n", ends)).encode("utf-8")


def _added(text: str, parsed: Parsed, path: Path, entry: str) -> str | None:
    values, lines = parsed.places.values, text.split("\n")
    if path not in values:
        key = path[-1] if len(path) == 1 else None
        return f"{text.rstrip()}\n{key}:\n  - {entry}\n" if isinstance(key, str) else None
    place = parsed.places.of(path)
    end = place.end_line - 1
    if lines[place.line - 1][place.column - 1 : place.column] == "[":
        bracket = place.end_column - 2
        comma = ", " if (*path, 0) in values else ""
        lines[end] = f"{lines[end][:bracket].rstrip()}{comma}{entry}{lines[end][bracket:]}"
        return "\n".join(lines)
    dash = lines[place.line - 1][: place.column - 1]
    if lines[place.line - 1][place.column - 1 : place.column] != "-" or dash.strip():
        return None
    return "\n".join([*lines[: end + 1], f"{dash}- {entry}", *lines[end + 1 :]])


def _meant(entry: str) -> object:
    return read_yaml(entry.encode("utf-8"), FILE).value


def _expected(value: object, path: Path, entry: object) -> object:
    if not path:
        return [*value, entry] if isinstance(value, list) else [entry]
    if isinstance(value, dict):
        key = str(path[0])
        return {**value, key: _expected(value.get(key), path[1:], entry)}
    if isinstance(value, list):
        return [_expected(one, path[1:], entry) if i == path[0] else one for i, one in enumerate(value)]
    return None
