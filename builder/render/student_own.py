"""What a participant writes for themselves: what they will change, and a sheet for their own board."""

from __future__ import annotations

from builder.model.board import BoardRules
from builder.model.hours import board_hours
from builder.model.site import SitePage
from builder.render.after_address import AFTER, CHANGES, OWN_SHEET, SCRIPT
from builder.render.maker import Maker

LINES = 3


def kept_at(made: Maker) -> str:
    """The name under which a device keeps what is written on these pages."""
    return f"caseloom/after/{made.course.file.id}"


def changes_page(made: Maker) -> SitePage:
    """Three lines: what I will change, by when, how I shall notice."""
    return made.page(
        CHANGES,
        made.say("after_changes"),
        "own_changes",
        kind="own",
        scripts=(SCRIPT,),
        reviewed=True,
        kept=kept_at(made),
        lines=range(1, LINES + 1),
        first=AFTER,
    )


def own_sheet_page(made: Maker) -> SitePage:
    """One sheet: what I took, what I learned, its hours by body, how I will use it."""
    file = made.course.file
    boards = [made.course.content.boards[name] for name in file.boards if name in made.course.content.boards]
    return made.page(
        OWN_SHEET,
        made.say("after_sheet"),
        "own_sheet",
        kind="own",
        scripts=(SCRIPT,),
        reviewed=True,
        kept=kept_at(made),
        hours=[(board.name, _hours(made, board)) for board in boards],
        first=AFTER,
    )


def _hours(made: Maker, board: BoardRules) -> str:
    """What the agenda comes to by this body's rules, in its own unit; empty without an agenda."""
    agenda = made.course.file.agenda
    if not agenda:
        return ""
    amount = board_hours(agenda, board).amount
    return made.say("after_hours", amount=f"{float(amount):g}", unit=board.hour_name)
