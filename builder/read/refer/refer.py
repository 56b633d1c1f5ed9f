"""All agreements between files, in one list, each said where it tells most."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from builder.diagnostic import Diagnostic
from builder.read.portable import pages_kept
from builder.read.refer.conditions import wrong_conditions
from builder.read.refer.names import unknown_names
from builder.read.refer.own import fact_names, file_names, lessons_listed, screened_facts, station_visits
from builder.read.refer.tags import wrong_tags
from builder.read.refer.twice import ids_twice
from builder.read.refer.values import wrong_values
from builder.read.shelf import Shelf
from builder.read.written import Entry

AGREEMENTS: tuple[Callable[[Shelf], Iterator[Diagnostic]], ...] = (
    unknown_names,
    wrong_values,
    wrong_conditions,
    ids_twice,
    file_names,
    station_visits,
    screened_facts,
    fact_names,
    lessons_listed,
    pages_kept,
    wrong_tags,
)
_HOLD_CONDITIONS = ("when", "does_not_apply", "applies", "asked_where", "limits", "needs")


def refer(shelf: Shelf) -> list[Diagnostic]:
    """Every fault of every file: its own, and those that only show beside the others."""
    unread = {fault.place for entry in shelf.entries for fault in entry.written.found}
    found = [fault for agree in AGREEMENTS for fault in agree(shelf) if fault.place not in unread]
    by_file: dict[str, list[Diagnostic]] = {}
    for fault in found:
        by_file.setdefault(fault.place.file, []).append(fault)
    for entry in shelf.entries:
        found += _untold(entry, by_file.get(entry.written.file, []))
    return found


def _untold(entry: Entry, told: list[Diagnostic]) -> Iterator[Diagnostic]:
    """The faults of a file by itself that nothing told more closely."""
    places = {one.place for one in told}
    for fault in entry.found:
        inside = fault.check == "value_refused" and fault.path[-1:] and fault.path[-1] in _HOLD_CONDITIONS
        closer = inside and any(one.path[: len(fault.path)] == fault.path for one in told)
        if not closer and (fault.place not in places or fault in entry.written.found):
            yield fault
