"""Explaining the hours of a course: its agenda line by line, by the rules of each of its boards."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from textwrap import shorten, wrap
from typing import Any

from builder.fault import Fault
from builder.flow.opened import Opened
from builder.model.board import BoardRules
from builder.model.course import AgendaItem, CourseFile
from builder.model.exact import number, percent
from builder.model.hours import BoardHours, DayHours, board_hours
from builder.read.nearest import suggest

WIDTH = 76
OLD_DAYS = 365  # own default: a year
HELD = {"clock": "held to the hours of the clock", "day": "held to the most of a day"}


def explain_hours(opened: Opened, name: str | None, today: date) -> tuple[list[str], dict[str, Any]]:
    """The hours by one board, or by each of the course's own; `today` tells whether rules are old."""
    if opened.course is None:
        raise Fault("The course cannot be put together.", "Run check and mend what it names.")
    file, known = opened.course.file, opened.course.content.boards
    if name is not None and name not in known:
        raise Fault(f"There are no rules of a board `{name}`.", suggest(name, known))
    boards = [known[one] for one in ((name,) if name else file.boards) if one in known]
    worked = [(board, board_hours(file.agenda, board)) for board in boards]
    lines = [line for board, hours in worked for line in (*_told(file, board, hours, today), "")]
    data = {"format": "caseloom/explain/1", "hours": [_data(board, hours) for board, hours in worked]}
    return lines[:-1], data


def _told(file: CourseFile, board: BoardRules, hours: BoardHours, today: date) -> Iterator[str]:
    yield f"{board.name} ({board.id})"
    about = [f"Read on {board.dated}: {board.source}"]
    about += [f"Not seen: {board.not_seen}"] if board.not_seen else []
    yield from (f"  {line}" for what in about for line in wrap(what, WIDTH, subsequent_indent="  "))
    if (today - board.dated).days > OLD_DAYS:
        yield f"  READ AGAIN: these rules were last read more than {OLD_DAYS} days ago."
    for day in hours.days:
        yield from ("", f"  Day {day.day}")
        yield from (_line(item, board) for item in file.agenda if item.day == day.day)
        yield _day(day, board)
    yield ""
    yield f"  Together {number(hours.amount)} {board.hour_name}{_rounding(hours, board)}"
    asked = f"; {percent(board.hands_on_share)} is asked for" if board.hands_on_share else ""
    yield f"  Hands-on work: {percent(hours.hands_on)} of the taught minutes that count{asked}"
    yield from (f"  {line}" for what in _asked(board) for line in wrap(what, WIDTH, subsequent_indent="  "))


def _asked(board: BoardRules) -> Iterator[str]:
    """What else the board asks, one sentence for each thing that it says."""
    yield f"To be attended: {percent(board.attendance_floor)} of the counted minutes"
    if board.certificate:
        yield f"On the certificate: {', '.join(board.certificate)}"
    days = {
        "Certificate handed over": board.certificate_days,
        "List of participants": board.report_days,
        "Changes reported": board.change_days,
    }
    yield from (f"{what}: {_within(count)}" for what, count in days.items() if count is not None)
    if board.lead_days:
        yield f"Sent in: at least {board.lead_days} days before the course"
    if board.keep_years:
        yield f"Records kept: {board.keep_years} years"
    if board.home_study_limit:
        yield f"From a distance: {board.home_study_limit}"
    if board.never_called:
        yield f"Never called: {', '.join(board.never_called)}"
    yield board.note


def _within(days: int) -> str:
    return f"within {days} days" if days else "on the same day"


def _line(item: AgendaItem, board: BoardRules) -> str:
    minutes = (item.end.hour - item.start.hour) * 60 + item.end.minute - item.start.minute
    counts = "" if item.kind in board.counted else "  not counted"
    kind = item.kind.replace("_", "-")
    when = f"{item.start:%H:%M}-{item.end:%H:%M}"
    return f"  {when} {minutes:>4} min  {kind:<10}  {shorten(item.title, 36, placeholder=' …')}{counts}"


def _day(day: DayHours, board: BoardRules) -> str:
    breaks = f", {day.breaks} of them break" if day.breaks else ""
    held = f" ({HELD[day.held]})" if day.held else ""
    unit = f"{day.counted} / {board.minutes_in_hour}"
    return f"  Counted: {day.counted} min{breaks}; {unit} = {number(day.hours)} hours{held}"


def _rounding(hours: BoardHours, board: BoardRules) -> str:
    if hours.exact == hours.amount:
        return ""
    way = "down" if board.rounded == "down" else "to the nearest"
    return f" (exactly {hours.exact}, rounded {way} to {board.step}, nothing under {board.least})"


def _data(board: BoardRules, hours: BoardHours) -> dict[str, Any]:
    days = [
        {
            "day": one.day,
            "planned": one.planned,
            "counted": one.counted,
            "breaks": one.breaks,
            "hours": str(one.hours),
            "held": one.held,
        }
        for one in hours.days
    ]
    return {
        "board": board.id,
        "read": board.dated.isoformat(),
        "unit": board.hour_name,
        "days": days,
        "exact": str(hours.exact),
        "amount": str(hours.amount),
        "hands_on": str(hours.hands_on),
    }
