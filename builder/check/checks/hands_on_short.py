"""Where a board asks for a share of hands-on work, the agenda has it."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.exact import percent
from builder.model.hours import board_hours
from builder.model.kind import Example
from builder.model.sample_board import sample_board

LEVEL: Level = "warning"
WHY = "A board that asks for hands-on work adds it up from the agenda, and refuses a course that lacks it."
BAD = Example(
    "course.yml",
    """
    boards: [guild]
    agenda:
      - {day: 1, start: 09:00, end: 10:00, title: Cold, kind: lecture, objectives: [choose]}
      - {day: 1, start: 10:00, end: 11:00, title: Pads and wraps, kind: hands_on, objectives: [choose]}
    """,
    more=(sample_board("hands_on_share: 75 %"),),
)
GOOD = Example(
    "course.yml",
    """
    boards: [guild]
    agenda:
      - {day: 1, start: 09:00, end: 09:30, title: Cold, kind: lecture, objectives: [choose]}
      - {day: 1, start: 09:30, end: 11:00, title: Pads and wraps, kind: hands_on, objectives: [choose]}
    """,
    more=(sample_board("hands_on_share: 75 %"),),
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Boards of the course whose share of hands-on work the agenda does not reach, exactly compared."""
    file, boards = evidence.course.file, evidence.course.content.boards
    for index, name in enumerate(file.boards):
        board = boards.get(name)
        if board is None or board.hands_on_share is None or not file.agenda:
            continue
        share = board_hours(file.agenda, board).hands_on
        if share < board.hands_on_share:
            asked = percent(board.hands_on_share)
            yield Finding(
                "course.yml",
                ("boards", index),
                f"{board.name} asks for {asked} hands-on work; of what it counts here, {percent(share)} is.",
                "Turn lecture into `hands_on`, lengthen it, or take the board out.",
            )
