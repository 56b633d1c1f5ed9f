"""Whether a participant was there for enough of what a board counts."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import UTC, datetime, time, timedelta
from fractions import Fraction
from zoneinfo import ZoneInfo

from builder.fault import Fault
from builder.model.board import BoardRules
from builder.model.code import tidy
from builder.model.course import AgendaItem
from builder.model.exact import number, percent
from builder.model.hours import merged, zone_of
from builder.model.records import ClassFolder, Requirement
from builder.model.taught import Participant, TaughtClass

Span = tuple[datetime, datetime]


def attendance_requirement(
    agenda: Sequence[AgendaItem],
    board: BoardRules,
    needed: Fraction,
    folder: ClassFolder,
    person: Participant,
) -> Requirement:
    """The share of a board's counted minutes, exact; the stricter of course and board decides."""
    least = max(needed, board.attendance_floor)
    counted = counted_spans(agenda, board, folder.taught)
    whole = minutes(counted)
    if not whole:
        words = "The agenda has no minutes that this board counts"
        return Requirement(kind="attendance", name=board.id, met=not least, reason=f"{words}.")
    there = minutes(shared(counted, present(folder, person)))
    reason = (
        f"{number(there)} of {number(whole)} counted minutes, {percent(there / whole)}; "
        f"{percent(least)} is needed."
    )
    return Requirement(kind="attendance", name=board.id, met=there / whole >= least, reason=reason)


def counted_spans(agenda: Sequence[AgendaItem], board: BoardRules, taught: TaughtClass) -> list[Span]:
    """What a board counts of the agenda, as spans of time in UTC, no moment twice."""
    days = [item for item in agenda if item.kind in board.counted]
    if beyond := [item.day for item in days if item.day > len(taught.dates)]:
        raise Fault(
            f"The agenda has a day {max(beyond)}, the class {taught.id} has {len(taught.dates)}.",
            "Give class.yml a date for each day of the agenda.",
        )
    zone = zone_of(taught.zone)
    return merged(
        (_on(taught, item.day, item.start, zone), _on(taught, item.day, item.end, zone)) for item in days
    )


def present(folder: ClassFolder, person: Participant) -> list[Span]:
    """When a participant was there, in UTC; a time without an offset is the class's own."""
    codes = {tidy(code) for code in person.codes}
    zone = zone_of(folder.taught.zone)
    rows = [row for row in folder.presences if tidy(row.code) in codes]
    return merged((_moment(row.arrived, zone), _moment(row.left, zone)) for row in rows)


def shared(one: Iterable[Span], other: Sequence[Span]) -> list[Span]:
    """The spans that both have in common."""
    both = [(max(a, c), min(b, d)) for a, b in one for c, d in other]
    return merged(both)


def minutes(spans: Iterable[Span]) -> Fraction:
    """The length of all spans, exact."""
    whole = sum((end - start for start, end in spans), timedelta())
    return Fraction(whole // timedelta(microseconds=1), 60_000_000)


def _on(taught: TaughtClass, day: int, at: time, zone: ZoneInfo) -> datetime:
    return datetime.combine(taught.dates[day - 1], at, zone).astimezone(UTC)


def _moment(at: datetime, zone: ZoneInfo) -> datetime:
    return (at if at.tzinfo else at.replace(tzinfo=zone)).astimezone(UTC)
