"""People, apart from everything else, so that what is personal can be destroyed on time."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import insert, select

from builder.doors.store.opening import Store, stamp
from builder.doors.store.schema import PEOPLE, of_class
from builder.model.records import ClassFolder
from builder.model.taught import Participant

PERSONAL = ("name", "name_on_licence", "licence", "email", "report")


def remember_person(store: Store, folder: ClassFolder, person: Participant, now: datetime) -> int:
    """The number of this person's row as now typed; a change is a new row."""
    typed = {name: getattr(person, name) for name in PERSONAL}
    mine = of_class(PEOPLE, folder) & (PEOPLE.c.code == person.code)
    with store.transaction():
        rows = store.rows(select(PEOPLE).where(mine).order_by(PEOPLE.c.id.desc()).limit(1))
        if rows and all(getattr(rows[0], name) == value for name, value in typed.items()):
            return int(rows[0].id)
        own = {"course": folder.course, "klass": folder.taught.id, "code": person.code}
        return store.add(insert(PEOPLE), {**own, **typed, "since": stamp(now)})


def person_of(store: Store, number: int) -> dict[str, str] | None:
    """Name, name on the licence and licence number of one row, unless it was destroyed."""
    rows = store.rows(select(PEOPLE).where(PEOPLE.c.id == number))
    return {name: getattr(rows[0], name) for name in PERSONAL[:3]} if rows else None
