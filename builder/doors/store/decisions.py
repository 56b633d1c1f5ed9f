"""Decisions, each beside all that came before it."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import insert, select

from builder.doors.store.opening import Store, stamp
from builder.doors.store.schema import DECISIONS, of_class
from builder.model.records import ClassFolder, Decision


def latest_decisions(store: Store, folder: ClassFolder) -> dict[str, tuple[int, Decision]]:
    """The newest decision about each participant of a class, with its number, by first personal code."""
    found = select(DECISIONS.c.id, DECISIONS.c.body).where(of_class(DECISIONS, folder))
    kept = (
        (row.id, Decision.model_validate_json(row.body)) for row in store.rows(found.order_by(DECISIONS.c.id))
    )
    return {decision.code: (number, decision) for number, decision in kept}


def add_decision(store: Store, decision: Decision, now: datetime) -> None:
    """Write a decision below the earlier ones about the same participant."""
    values = {
        "course": decision.course,
        "klass": decision.klass,
        "code": decision.code,
        "met": decision.met,
        "decided": stamp(now),
        "body": decision.model_dump_json(),
    }
    store.add(insert(DECISIONS), values)
