"""Grades a class and writes down every decision that is new."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from builder.doors.store.decisions import add_decision, latest_decisions
from builder.doors.store.opening import Store
from builder.doors.store.rings import remember_rings, rings_by_edition
from builder.doors.store.sheets import sheets_of
from builder.grade.decide import decide
from builder.grade.waiting import rows_to_mark
from builder.model.key import KeyRing
from builder.model.outcome import Graded
from builder.model.records import ClassFolder, Decision, Terms
from builder.model.standing import counted_apart


def grade_class(
    store: Store,
    terms: Terms,
    folder: ClassFolder,
    rings: Sequence[KeyRing],
    now: datetime,
    *,
    write: bool = True,
) -> Graded:
    """Decide about every participant; with `write` off, only show who would change."""
    with store.transaction():
        known = rings_by_edition(store, rings)
        sheets, apart = counted_apart(sheets_of(store, folder), folder), folder.apart()
        before = {code: decision for code, (_, decision) in latest_decisions(store, folder).items()}
        made = [
            decide(terms, apart[person.code], person, sheets[person.code], known)
            for person in folder.participants
        ]
        fresh = [one for one in made if before.get(one.code) != one]
        if write:
            _write(store, rings, fresh, now)
    return Graded(
        klass=folder.taught.id,
        names={person.code: person.name for person in folder.participants},
        decisions=tuple(made),
        written=tuple(one.code for one in fresh),
        to_mark=tuple(rows_to_mark(folder, [one for mine in sheets.values() for one in mine], known)),
        turned=tuple(one.code for one in fresh if one.code in before and before[one.code].met != one.met),
    )


def _write(store: Store, rings: Sequence[KeyRing], fresh: Sequence[Decision], now: datetime) -> None:
    remember_rings(store, rings, now)
    for decision in fresh:
        add_decision(store, decision, now)
