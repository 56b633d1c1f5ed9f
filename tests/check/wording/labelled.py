"""The labelled questions, and the fixed rule that parts them into a tuning half and an untouched half."""

from __future__ import annotations

from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

from builder.disk import read_bytes
from builder.doors.text import LIMIT
from builder.doors.yaml import read_yaml

HERE = Path(__file__).parent


@dataclass(frozen=True)
class Labelled:
    """One invented question with the faults an editor finds in it; `right` holds positions from 0."""

    id: str
    stem: str
    options: tuple[str, ...]
    right: frozenset[int]
    faults: frozenset[str]


def labelled_questions() -> list[Labelled]:
    """Every labelled question, in the order of files and of lines."""
    found: list[Labelled] = []
    for path in sorted(HERE.glob("*.yml")):
        rows = read_yaml(read_bytes(path, LIMIT), path.name).value
        found += [_labelled(row) for row in (rows if isinstance(rows, list) else ())]
    return found


def halves() -> tuple[list[Labelled], list[Labelled]]:
    """The tuning half and the untouched half: same labels, in order of the ids' digests, in turn."""
    groups: dict[tuple[str, ...], list[Labelled]] = {}
    for one in sorted(labelled_questions(), key=lambda one: sha256(one.id.encode()).digest()):
        groups.setdefault(tuple(sorted(one.faults)), []).append(one)
    return (
        [one for group in groups.values() for one in group[0::2]],
        [one for group in groups.values() for one in group[1::2]],
    )


def lesson() -> str:
    """The lesson that the questions belong to."""
    return (HERE / "lesson.md").read_text(encoding="utf-8")


def _labelled(row: dict[str, object]) -> Labelled:
    options, key, faults = row["options"], row["key"], row["faults"]
    if not (isinstance(options, list) and isinstance(key, list) and isinstance(faults, list)):
        raise TypeError(row["id"])
    return Labelled(
        str(row["id"]),
        str(row["stem"]),
        tuple(str(one) for one in options),
        frozenset(int(one) - 1 for one in key),
        frozenset(str(one) for one in faults),
    )
