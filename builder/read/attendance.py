"""The attendance of a class: who came and left when, on which of its days."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator
from datetime import datetime
from zoneinfo import ZoneInfo

from builder.diagnostic import Diagnostic
from builder.doors.sheet import Sheet
from builder.model.code import tidy
from builder.model.taught import Presence, TaughtClass
from builder.read.nearest import quoted
from builder.read.rows import Row, rows_of, wrong_columns

COLUMNS = ("code", "day", "arrived", "left")
_MOMENT = re.compile(r"20\d\d-\d\d-\d\d[T ]\d\d:\d\d(:\d\d)?(Z|[+-]\d\d:\d\d)")
_HOW = "Write it with its offset from world time: `2026-11-21T09:00-05:00`."


def read_attendance(
    sheet: Sheet, taught: TaughtClass, zone: ZoneInfo, codes: Collection[str]
) -> tuple[tuple[Presence, ...], list[Diagnostic]]:
    """The presences whose rows hold, and all that is wrong with the others; `codes` are the roster's."""
    found = [*sheet.found, *wrong_columns(sheet, COLUMNS, COLUMNS)]
    good: list[tuple[Row, Presence]] = []
    for row in rows_of(sheet) if set(COLUMNS) <= set(sheet.columns) else ():
        arrived, left = _moment(row["arrived"]), _moment(row["left"])
        faults = [*_wrong_person(row, codes), *_wrong_day(row, taught)]
        faults += [_no_moment(row, name) for name, at in (("arrived", arrived), ("left", left)) if at is None]
        if not faults and arrived and left:
            presence = Presence(code=tidy(row["code"]), day=int(row["day"]), arrived=arrived, left=left)
            faults += _wrong_times(row, presence, taught, zone)
            good += [] if any(one.level == "error" for one in faults) else [(row, presence)]
        found += faults
    found += _overlaps(good)
    return tuple(presence for _, presence in good), found


def _moment(text: str) -> datetime | None:
    try:
        return datetime.fromisoformat(text) if _MOMENT.fullmatch(text) else None
    except ValueError:
        return None


def _no_moment(row: Row, name: str) -> Diagnostic:
    return row.fault("time_expected", name, (f"`{name}` must be a moment, not {quoted(row[name])}.", _HOW))


def _wrong_person(row: Row, codes: Collection[str]) -> Iterator[Diagnostic]:
    if tidy(row["code"]) not in codes:
        message = f"Nobody in the roster has the code {quoted(row['code'])}."
        yield row.fault("code_unknown", "code", (message, "Compare it with roster.csv."))


def _wrong_day(row: Row, taught: TaughtClass) -> Iterator[Diagnostic]:
    if row["day"] not in {str(number + 1) for number in range(len(taught.dates))}:
        message = f"{quoted(row['day'])} is no day of this class."
        yield row.fault("day_unknown", "day", (message, f"Its days are 1 to {len(taught.dates)}."))


def _wrong_times(row: Row, presence: Presence, taught: TaughtClass, zone: ZoneInfo) -> Iterator[Diagnostic]:
    if presence.left <= presence.arrived:
        words = "Leaving does not come after arriving.", "Compare both times and their offsets."
        yield row.fault("times_reversed", "left", words)
    date = taught.dates[presence.day - 1]
    if presence.arrived.astimezone(zone).date() != date:
        words = f"Day {presence.day} of this class is {date}.", "Correct the date or the day."
        yield row.fault("wrong_day", "arrived", words)
    for name, at in (("arrived", presence.arrived), ("left", presence.left)):
        if at.utcoffset() != (there := at.astimezone(zone)).utcoffset():
            words = f"In {taught.zone} the offset was {there:%z} then.", "Correct it if it was typed by hand."
            yield row.fault("offset_odd", name, words, level="warning")


def _overlaps(rows: list[tuple[Row, Presence]]) -> Iterator[Diagnostic]:
    last: dict[str, tuple[Row, Presence]] = {}
    for row, presence in sorted(rows, key=lambda one: (one[1].arrived, one[0].index)):
        before = last.get(presence.code)
        if before and presence.arrived < before[1].left:
            words = "This overlaps another row of the same person.", "Correct the times, or remove one row."
            yield row.fault("times_overlap", "arrived", words, first=before[0].at("arrived"))
        if not before or presence.left > before[1].left:
            last[presence.code] = (row, presence)
