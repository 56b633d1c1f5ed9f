"""A thing to fix: what is wrong in an author's file, where, and what mends it."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from builder.place import Path, Place

Level = Literal["error", "warning", "advice"]
LEVELS: tuple[Level, ...] = ("error", "warning", "advice")


@dataclass(frozen=True)
class Related:
    """Another place that belongs to the same thing to fix."""

    place: Place
    message: str


@dataclass(frozen=True)
class Diagnostic:
    """One thing to fix; `message` names the fault, `remedy` says how to mend it.

    `accepted` is the author's reason to leave it as it is; empty where it is not accepted.
    """

    check: str
    level: Level
    place: Place
    message: str
    remedy: str
    path: Path = ()
    rules: tuple[str, ...] = ()
    related: tuple[Related, ...] = field(default=())
    accepted: str = ""


def in_order(found: list[Diagnostic]) -> list[Diagnostic]:
    """The things to fix, sorted by place, each once."""
    return sorted(dict.fromkeys(found), key=lambda one: (one.place, one.check, one.message))


def count_levels(found: list[Diagnostic]) -> dict[str, int]:
    """How many there are of each level, every level named; what is accepted is not counted."""
    return {level: sum(one.level == level and not one.accepted for one in found) for level in LEVELS}
