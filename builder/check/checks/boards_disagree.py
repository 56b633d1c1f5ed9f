"""Two boards of one course that cannot be met by the same words or the same minutes are named."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.board import BoardRules
from builder.model.course import AgendaItem
from builder.model.exact import number
from builder.model.hours import board_hours
from builder.model.kind import Example
from builder.model.sample_board import sample_board

LEVEL: Level = "advice"
WHY = (
    "One course for two boards may have two numbers of hours, or use a word that one of them forbids. "
    "Each certificate must then say whose hours it gives."
)
BAD = Example(
    "course.yml", "boards: [generic, guild]", more=(sample_board(minutes=50, hour_name="guild hours"),)
)
GOOD = Example("course.yml", "boards: [guild]", more=(sample_board(minutes=50, hour_name="guild hours"),))


def check(evidence: Evidence) -> Iterator[Finding]:
    """Each pair of boards that differ for this agenda, at the second, with what they differ in."""
    file, known = evidence.course.file, evidence.course.content.boards
    named = [(index, known[name]) for index, name in enumerate(file.boards) if name in known]
    for (_, one), (index, other) in combinations(named, 2):
        differences = [*_forbidden(one, other), *_forbidden(other, one), *_counts(file.agenda, one, other)]
        if differences:
            yield Finding(
                "course.yml",
                ("boards", index),
                f"{one.name} and {other.name} differ for this course: {'; '.join(differences)}.",
                "Give each its own certificate or line, or accept it here, with the reason.",
            )


def _forbidden(one: BoardRules, other: BoardRules) -> Iterator[str]:
    words = {word.lower() for word in other.hour_name.split()}
    if any(word.lower() in words for word in one.never_called):
        yield f"“{other.hour_name}” is a word that {one.name} forbids"


def _counts(agenda: tuple[AgendaItem, ...], one: BoardRules, other: BoardRules) -> Iterator[str]:
    amounts = [number(board_hours(agenda, board).amount) for board in (one, other)]
    if amounts[0] != amounts[1]:
        yield f"{amounts[0]} {one.hour_name} and {amounts[1]} {other.hour_name}"
    if one.attendance_floor != other.attendance_floor:
        yield "how much of it must be attended"
