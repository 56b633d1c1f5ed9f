"""A record of an earlier edition is brought up to date, with a copy kept."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest
from alembic.script import ScriptDirectory
from sqlalchemy import create_engine

from builder.doors.store.opening import open_store
from builder.doors.store.schema import REVISIONS
from builder.doors.store.sheets import sheets_of
from builder.doors.store.upgrade import STEPS, upgrade
from builder.fault import Fault
from builder.model.records import ClassFolder
from tests.records.kept import contents, keep, opened, record
from tests.records.made import NOW, answers, code_for, folder, person, sheet_bytes

ANN = person(1)


def old_record(place: Path) -> ClassFolder:
    """A record of the first edition, with one answer sheet in it."""
    record(place).parent.mkdir(parents=True)
    engine = create_engine(f"sqlite:///{record(place)}")
    with engine.begin() as connection:
        upgrade(connection, REVISIONS[0])
        body = sheet_bytes(ANN.code, answers())
        values = (
            "falls",
            "spring",
            "final",
            "A",
            "k7q2m9xa",
            code_for(100),
            "1" * 32,
            1,
            "d",
            NOW.isoformat(),
            body,
        )
        columns = "course, klass, test, version, edition, code, sheet, rev, digest, received, body"
        marks = ", ".join("?" * len(values))
        statement = f"INSERT INTO sheets ({columns}) VALUES ({marks})"  # noqa: S608 - our own columns
        connection.exec_driver_sql(statement, values)
    engine.dispose()
    return folder(ANN)


def test_the_steps_end_where_the_tool_stands() -> None:
    """The editions the opener knows are the steps there are, in their order."""
    steps = ScriptDirectory(str(STEPS)).walk_revisions()
    assert tuple(step.revision for step in steps)[::-1] == REVISIONS


def test_an_upgrade_keeps_every_row_and_a_copy(tmp_path: Path) -> None:
    """The old file is copied whole before anything changes, and its sheets are there afterwards."""
    spring = old_record(tmp_path)
    with opened(tmp_path) as store:
        assert [kept.digest for kept in sheets_of(store, spring)] == ["d"]
        keep(store, spring, ANN.code)
    copy = record(tmp_path).with_name("records.sqlite.0001.20260609T120000Z")
    with closing(sqlite3.connect(copy)) as old:
        assert old.execute("SELECT version_num FROM alembic_version").fetchall() == [("0001",)]
        assert old.execute("SELECT digest FROM sheets").fetchall() == [("d",)]
    assert len(contents(tmp_path)["sheets"]) == 2


def test_a_failed_upgrade_leaves_the_old_record(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A step that fails half-way is undone whole."""
    old_record(tmp_path)
    monkeypatch.setattr("builder.doors.store.guard.without_gaps", lambda: "CREATE TRIGGER nonsense")
    with pytest.raises(Fault, match="could not be used"), open_store(record(tmp_path), NOW):
        pass
    monkeypatch.undo()
    with closing(sqlite3.connect(record(tmp_path))) as old:
        tables = {row[0] for row in old.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    assert "sheets" in tables
    assert "people" not in tables
