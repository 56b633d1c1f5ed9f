"""Opens records for tests, and looks at them past the door."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from builder.collect.collect import collect_class
from builder.doors.store.opening import Store, open_store
from builder.doors.store.sheets import add_sheet
from builder.model.handed import sheet_of
from builder.model.outcome import Collected
from builder.model.records import ClassFolder, KeptSheet
from tests.records.made import NOW, answers, ring, sheet_bytes

TABLES = ("sheets", "refusals", "rings", "decisions", "people", "certificates")


@contextmanager
def opened(place: Path) -> Iterator[Store]:
    """The record of a test, in a folder of its own."""
    with open_store(record(place), NOW) as store:
        yield store


def record(place: Path) -> Path:
    """Where the record of a test lies."""
    return place / "private" / "records.sqlite"


def look(place: Path, statement: str) -> list[tuple[object, ...]]:
    """What a plain connection finds or does in the record."""
    with closing(sqlite3.connect(record(place))) as connection, connection:
        return connection.execute(statement).fetchall()


def contents(place: Path, *tables: str) -> dict[str, list[tuple[object, ...]]]:
    """Every row of the record but for its number and times, sorted."""
    told = {}
    for table in tables or TABLES:
        columns = [str(row[1]) for row in look(place, f"PRAGMA table_info({table})")]
        kept = [
            name for name in columns if name not in ("id", "received", "seen", "decided", "since", "written")
        ]
        statement = f"SELECT {', '.join(kept)} FROM {table}"  # noqa: S608 - our own tables
        told[table] = sorted(look(place, statement), key=repr)
    return told


def hand_in(place: Path, **files: bytes) -> Path:
    """An inbox that holds these files, each with the suffix of an answer sheet."""
    inbox = place / "answers"
    inbox.mkdir(exist_ok=True)
    for name, data in files.items():
        (inbox / f"{name}.json").write_bytes(data)
    return inbox


def collect(store: Store, folder: ClassFolder, inbox: Path) -> Collected:
    """Collect a class with the usual keys, at the usual time."""
    return collect_class(store, folder, inbox, [ring()], NOW)


def keep(
    store: Store, folder: ClassFolder, code: str, version: str = "A", wrong: int = 0, **changed: object
) -> str:
    """Put one answer sheet straight into the record; its digest."""
    data = sheet_bytes(code, answers(version, wrong=wrong), **changed)
    digest = f"{code}-{wrong}-{len(data)}-{changed.get('rev', 1)}"
    add_sheet(store, folder, KeptSheet(digest=digest, received=NOW, sheet=sheet_of(data)), data)
    return digest
