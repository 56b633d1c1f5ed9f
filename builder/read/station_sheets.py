"""Station sheets of a class: what each examiner marked, held against the station and the roster."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping

from builder.diagnostic import Diagnostic
from builder.model.code import is_code, tidy
from builder.model.station import Station, StationSheet
from builder.read.nearest import quoted, suggest
from builder.read.written import Entry, Written


def sheet_faults(
    entry: Entry, stations: Mapping[str, Station | None], codes: Collection[str]
) -> Iterator[Diagnostic]:
    """Everything wrong with one sheet; `codes` are the roster's, a station with faults of its own is None."""
    yield from entry.found
    if not isinstance(entry.noun, StationSheet):
        return
    sheet, written = entry.noun, entry.written
    if not is_code(sheet.code):
        message = f"{quoted(sheet.code)} is no personal code, or a character in it is wrong."
        yield written.fault("code_wrong", ("code",), (message, "Compare it with roster.csv."))
    elif tidy(sheet.code) not in codes:
        message = f"Nobody in the roster has the code {quoted(sheet.code)}."
        yield written.fault("code_unknown", ("code",), (message, "Compare it with roster.csv."))
    if sheet.station not in stations:
        words = f"There is no station {quoted(sheet.station)}.", suggest(sheet.station, stations)
        yield written.fault("station_unknown", ("station",), words)
    elif (station := stations[sheet.station]) is not None:
        yield from _wrong_marks(written, sheet, station)


def _wrong_marks(written: Written, sheet: StationSheet, station: Station) -> Iterator[Diagnostic]:
    top = {one.id: len(one.levels) - 1 for one in station.criteria}
    for name, level in sheet.marked.items():
        if name not in top:
            words = f"The station has no criterion {quoted(name)}.", suggest(name, top)
            yield written.fault("criterion_unknown", ("marked", name), words, key=True)
        elif not 0 <= level <= top[name]:
            words = f"`{name}` has no level {level}.", f"Its levels are 0 to {top[name]}."
            yield written.fault("level_unknown", ("marked", name), words)
    for name in top:
        if name not in sheet.marked:
            words = f"The criterion `{name}` is not marked; it earns nothing.", "Mark it, if it was seen."
            yield written.fault("criterion_not_marked", ("marked",), words, key=True, level="warning")
    fails = {one.id for one in station.automatic_fails}
    for index, name in enumerate(sheet.seen):
        if name not in fails:
            words = f"The station has no automatic fail {quoted(name)}.", suggest(name, fails)
            yield written.fault("automatic_fail_unknown", ("seen", index), words)
