"""The record itself refuses what must never happen to it."""

import sqlite3

import pytest

from builder.doors.store.guard import append_only, without_gaps


@pytest.fixture
def notes() -> sqlite3.Connection:
    """A guarded table with one row, on a plain connection."""
    connection = sqlite3.connect(":memory:")
    connection.execute("CREATE TABLE notes (id INTEGER PRIMARY KEY, digest TEXT UNIQUE, body TEXT)")
    for statement in append_only("notes", ("digest",)):
        connection.execute(statement)
    connection.execute("INSERT INTO notes (digest, body) VALUES ('d', 'first')")
    return connection


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE notes SET body = 'other'",
        "UPDATE notes SET body = body",
        "DELETE FROM notes",
        "INSERT OR REPLACE INTO notes (digest, body) VALUES ('d', 'other')",
        "REPLACE INTO notes (id, digest, body) VALUES (1, 'e', 'other')",
        "INSERT INTO notes (digest) VALUES ('d') ON CONFLICT (digest) DO UPDATE SET body = 'other'",
    ],
)
def test_rows_are_for_good(notes: sqlite3.Connection, statement: str) -> None:
    """No way of changing, removing or replacing a row gets by, on anybody's connection."""
    with pytest.raises(sqlite3.DatabaseError, match="never changed or removed"):
        notes.execute(statement)
    assert notes.execute("SELECT body FROM notes").fetchall() == [("first",)]
    notes.close()


def test_new_rows_are_welcome(notes: sqlite3.Connection) -> None:
    """A guarded table still grows."""
    notes.execute("INSERT INTO notes (digest, body) VALUES ('e', 'second')")
    assert notes.execute("SELECT count(*) FROM notes").fetchone() == (2,)
    notes.close()


@pytest.mark.parametrize(("number", "fine"), [(3, True), (2, True), (4, False), (0, False), (-1, False)])
def test_numbers_leave_no_gap(number: int, *, fine: bool) -> None:
    """The next number, or one already given (for a reissue), may be written; another provider begins at 1."""
    connection = sqlite3.connect(":memory:")
    connection.execute("CREATE TABLE certificates (provider TEXT, number INTEGER)")
    connection.execute(without_gaps())
    connection.executemany("INSERT INTO certificates VALUES (?, ?)", [("P", 1), ("P", 2), ("Q", 1)])
    statement = "INSERT INTO certificates VALUES ('P', ?)"
    if fine:
        connection.execute(statement, (number,))
    else:
        with pytest.raises(sqlite3.DatabaseError, match="no gap"):
            connection.execute(statement, (number,))
    connection.close()
