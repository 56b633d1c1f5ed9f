"""Opens the record: one SQLite file that loses nothing acknowledged."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from time import sleep
from typing import Any

from sqlalchemy import Connection, Executable, NullPool, Row, create_engine, event
from sqlalchemy.exc import DBAPIError

from builder.doors.store.schema import REVISIONS
from builder.fault import Fault

WAIT_SECONDS = 30
TRIES_A_SECOND = 50
PRAGMAS = ("journal_mode = WAL", "synchronous = FULL", "foreign_keys = ON", "recursive_triggers = ON")
PUBLIC = "publish"


class Store:
    """An opened record; every statement runs inside a transaction that holds the right to write."""

    def __init__(self, path: Path, connection: Connection) -> None:
        """Keep the connection to ourselves: verbs speak in nouns."""
        self.path = path
        self._connection = connection

    @contextmanager
    def transaction(self) -> Iterator[Connection]:
        """All or nothing; joins a transaction that is already open."""
        if self._connection.in_transaction():
            yield self._connection
            return
        with _in_plain_words(self.path), self._connection.begin():
            yield self._connection

    def rows(self, statement: Executable) -> Sequence[Row[Any]]:
        """Every row a statement finds."""
        with self.transaction() as connection:
            return connection.execute(statement).all()

    def add(self, statement: Executable, values: Mapping[str, object]) -> int:
        """Insert one row; its number."""
        with self.transaction() as connection:
            return int(connection.execute(statement, dict(values)).lastrowid)


@contextmanager
def open_store(path: Path, now: datetime) -> Iterator[Store]:
    """Open the record at `path`, made or brought up to date where needed; `now` names a backup."""
    if PUBLIC in path.resolve().parts:
        raise Fault(f"{path.name} would lie in a published folder.", "Keep the record on the private side.")
    _make_private(path)
    engine = create_engine("sqlite+pysqlite://", creator=lambda: _connect(path), poolclass=NullPool)
    event.listen(engine, "begin", _take_the_right_to_write)
    with _in_plain_words(path), engine.connect() as connection:
        _bring_up_to_date(path, connection, now)
        yield Store(path, connection)


def stamp(now: datetime) -> str:
    """A time as the record keeps it: UTC, to the microsecond, so that text sorts as time does."""
    return now.astimezone(UTC).isoformat(timespec="microseconds")


def _make_private(path: Path) -> None:
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        path.touch(mode=0o600)
    except OSError as error:
        raise Fault(
            f"The record {path.name} cannot be made: {error.strerror}.", "Choose another place."
        ) from error


def _connect(path: Path) -> sqlite3.Connection:
    connection = sqlite3.connect(path, timeout=WAIT_SECONDS, isolation_level=None)
    for pragma in PRAGMAS:
        _set(connection, pragma)
    return connection


def _set(connection: sqlite3.Connection, pragma: str) -> None:
    """Set a pragma; the change to WAL does not itself wait for another process that is making it."""
    for left in range(WAIT_SECONDS * TRIES_A_SECOND, -1, -1):
        try:
            connection.execute(f"PRAGMA {pragma}")
        except sqlite3.OperationalError as error:
            if error.sqlite_errorcode != sqlite3.SQLITE_BUSY or not left:
                raise
            sleep(1 / TRIES_A_SECOND)
        else:
            return


def _take_the_right_to_write(connection: Connection) -> None:
    connection.exec_driver_sql("BEGIN IMMEDIATE")


@contextmanager
def _in_plain_words(path: Path) -> Iterator[None]:
    try:
        yield
    except (DBAPIError, sqlite3.Error) as error:
        said = error.orig if isinstance(error, DBAPIError) else error
        remedy = (
            "See that no other command is at work, the disk has room and the file is a record of caseloom."
        )
        raise Fault(f"The record {path.name} could not be used: {said}.", remedy) from error


def _bring_up_to_date(path: Path, connection: Connection, now: datetime) -> None:
    known = _revision(path, connection)
    if known == REVISIONS[-1]:
        return
    if known is not None:
        _back_up(path, known, now)
    from builder.doors.store.upgrade import upgrade  # noqa: PLC0415 - loads alembic, which an upgrade alone needs

    with connection.begin():
        upgrade(connection)


def _revision(path: Path, connection: Connection) -> str | None:
    with connection.begin():
        tables = (
            connection.exec_driver_sql("SELECT name FROM sqlite_master WHERE type = 'table'").scalars().all()
        )
        if not tables:
            return None
        found = (
            connection.exec_driver_sql("SELECT version_num FROM alembic_version").scalar()
            if "alembic_version" in tables
            else None
        )
    if found not in REVISIONS:
        words = "was written by a newer caseloom" if found else "is not a record of caseloom"
        raise Fault(f"{path.name} {words}.", "Install the newest caseloom, or choose another file.")
    return str(found)


def _back_up(path: Path, known: str, now: datetime) -> None:
    backup = path.with_name(f"{path.name}.{known}.{now.astimezone(UTC):%Y%m%dT%H%M%SZ}")
    _make_private(backup)
    with sqlite3.connect(path) as source, sqlite3.connect(backup) as target:
        source.backup(target)
