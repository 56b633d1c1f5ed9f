"""Whether a practical station is passed: enough points, and nothing seen that fails it outright."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence

from builder.grade.scoring.rubric import points
from builder.model.code import tidy
from builder.model.exact import percent
from builder.model.records import Requirement
from builder.model.station import Station, StationSheet
from builder.model.taught import Participant


def station_requirement(station: Station, sheets: Sequence[StationSheet], person: Participant) -> Requirement:
    """The best attempt decides; within one attempt every examiner's sheet must pass."""
    codes = [tidy(code) for code in person.codes]
    by_code: dict[int, list[StationSheet]] = defaultdict(list)
    for sheet in sheets:
        if sheet.station == station.id and tidy(sheet.code) in codes:
            by_code[codes.index(tidy(sheet.code))].append(sheet)
    verdicts = [_of_attempt(station, by_code[number]) for number in sorted(by_code)]
    met, reason = max(verdicts, key=lambda one: one[0], default=(False, "No examiner's sheet has come in."))
    return Requirement(kind="station", name=station.id, met=met, reason=reason)


def _of_attempt(station: Station, sheets: Sequence[StationSheet]) -> tuple[bool, str]:
    verdicts = [_verdict(station, sheet) for sheet in sheets]
    return min(verdicts, key=lambda one: one[0])


def _verdict(station: Station, sheet: StationSheet) -> tuple[bool, str]:
    if strange := _off_the_scale(station, sheet):
        return False, f"{sheet.examiner}'s sheet cannot be counted: {', '.join(strange)} is not on the scale."
    if sheet.seen:
        seen = {fail.id: fail.seen for fail in station.automatic_fails}
        return False, f"Fails whatever the points: {'; '.join(seen.get(one, one) for one in sheet.seen)}"
    share = points(station.criteria, sheet.marked)
    missing = [one.id for one in station.criteria if one.id not in sheet.marked]
    reason = f"{percent(share)} of the points; {percent(station.pass_mark)} passes"
    return (
        share >= station.pass_mark,
        f"{reason}; not marked: {', '.join(missing)}." if missing else f"{reason}.",
    )


def _off_the_scale(station: Station, sheet: StationSheet) -> list[str]:
    top = {one.id: len(one.levels) - 1 for one in station.criteria}
    return [f"{name} {level}" for name, level in sheet.marked.items() if not 0 <= level <= top.get(name, -1)]
