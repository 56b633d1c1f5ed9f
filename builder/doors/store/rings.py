"""Keys by edition, as far as the record has seen them."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from sqlalchemy import insert, select

from builder.doors.store.opening import Store, stamp
from builder.doors.store.schema import RINGS
from builder.model.key import KeyRing


def remember_rings(store: Store, rings: Iterable[KeyRing], now: datetime) -> None:
    """Keep each key ring that is new, so that answers to an earlier edition can be graded for good."""
    with store.transaction():
        known = {tuple(row) for row in store.rows(select(RINGS.c.test, RINGS.c.edition, RINGS.c.key_edition))}
        for ring in rings:
            name = {"test": ring.test, "edition": ring.edition, "key_edition": ring.key_edition}
            if tuple(name.values()) not in known:
                known.add(tuple(name.values()))
                store.add(insert(RINGS), {**name, "seen": stamp(now), "body": ring.model_dump_json()})


def rings_by_edition(store: Store, given: Iterable[KeyRing]) -> dict[tuple[str, str], KeyRing]:
    """The key ring of each test and edition: the one given, else the newest in the record."""
    rows = store.rows(select(RINGS.c.body).order_by(RINGS.c.id))
    kept = (KeyRing.model_validate_json(row.body) for row in rows)
    return {(ring.test, ring.edition): ring for ring in (*kept, *given)}
