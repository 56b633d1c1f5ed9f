"""The record opens whole, private and at one edition, or says why not."""

import sqlite3
import stat
from contextlib import closing
from pathlib import Path

import pytest
from sqlalchemy import text

from builder.doors.store.opening import Store, open_store, stamp
from builder.doors.store.schema import REVISIONS
from builder.fault import Fault
from builder.model.records import ClassFolder
from tests.records.kept import keep, look, opened, record
from tests.records.made import NOW, folder, person

ODD = "a place é 100% 'quoted'"


@pytest.mark.parametrize(
    ("pragma", "value"),
    [("journal_mode", "wal"), ("synchronous", 2), ("foreign_keys", 1), ("recursive_triggers", 1)],
)
def test_nothing_acknowledged_can_be_lost(tmp_path: Path, pragma: str, value: object) -> None:
    """The settings by which the database promises durability are on, in a folder of any name."""
    with opened(tmp_path / ODD) as store:
        assert store.rows(text(f"PRAGMA {pragma}"))[0][0] == value


def test_a_record_is_for_its_owner_alone(tmp_path: Path) -> None:
    """Others on the machine cannot read the file, nor what lies beside it."""
    with opened(tmp_path):
        modes = {path.name: stat.S_IMODE(path.stat().st_mode) for path in record(tmp_path).parent.iterdir()}
    assert set(modes.values()) == {0o600}


def test_opening_again_changes_nothing(tmp_path: Path) -> None:
    """A record at the newest edition is opened as it is, without a backup."""
    for _ in range(2):
        with opened(tmp_path):
            pass
    assert [path.name for path in record(tmp_path).parent.iterdir()] == ["records.sqlite"]
    assert look(tmp_path, "SELECT version_num FROM alembic_version") == [(REVISIONS[-1],)]


def test_a_transaction_is_all_or_nothing(tmp_path: Path) -> None:
    """What fails half-way leaves nothing behind; a transaction inside another joins it."""
    ann = person(1)
    with opened(tmp_path) as store:
        with pytest.raises(Fault, match="never changed"), store.transaction():
            keep_twice(store, folder(ann), ann.code)
        assert store.rows(text("SELECT * FROM sheets")) == []


def keep_twice(store: Store, spring: ClassFolder, code: str) -> None:
    """Take a sheet, and then the same once more, which fails."""
    with store.transaction():
        keep(store, spring, code)
    keep(store, spring, code)


def test_a_newer_record_is_refused(tmp_path: Path) -> None:
    """A file that a later edition of the tool wrote is left alone."""
    with opened(tmp_path):
        pass
    look(tmp_path, "UPDATE alembic_version SET version_num = '9999'")
    with pytest.raises(Fault, match="newer caseloom"), opened(tmp_path):
        pass
    assert look(tmp_path, "SELECT version_num FROM alembic_version") == [("9999",)]


def test_a_stranger_s_database_is_refused(tmp_path: Path) -> None:
    """A database that is none of ours is left alone."""
    path = tmp_path / "other.sqlite"
    with closing(sqlite3.connect(path)) as other, other:
        other.execute("CREATE TABLE songs (title)")
    with pytest.raises(Fault, match="not a record"), open_store(path, NOW):
        pass


def test_a_file_that_is_no_database_is_refused(tmp_path: Path) -> None:
    """Other bytes are said to be no record, in plain words."""
    path = tmp_path / "notes.sqlite"
    path.write_bytes(b"not a database, " * 200)
    with pytest.raises(Fault, match="could not be used"), open_store(path, NOW):
        pass


def test_a_record_never_lies_in_a_published_folder(tmp_path: Path) -> None:
    """A place below `publish` is refused before anything is made there."""
    with pytest.raises(Fault, match="published"), open_store(tmp_path / "publish" / "r.sqlite", NOW):
        pass
    assert list(tmp_path.iterdir()) == []


def test_a_place_that_cannot_be_is_a_fault(tmp_path: Path) -> None:
    """A folder that cannot be made is one plain line."""
    (tmp_path / "file").write_text("")
    with pytest.raises(Fault, match="cannot be made"), open_store(tmp_path / "file" / "r.sqlite", NOW):
        pass


def test_a_refused_change_is_a_fault(tmp_path: Path) -> None:
    """The database's own refusal comes out in plain words, and the record stays open."""
    ann = person(1)
    with opened(tmp_path) as store:
        keep(store, folder(ann), ann.code)
        with pytest.raises(Fault, match="never changed"):
            keep(store, folder(ann), ann.code)
        assert len(store.rows(text("SELECT * FROM sheets"))) == 1


def test_times_sort_as_text() -> None:
    """A whole second sorts before its own fraction."""
    assert stamp(NOW) < stamp(NOW.replace(microsecond=5)) < stamp(NOW.replace(second=1))
    assert stamp(NOW) == "2026-06-09T12:00:00.000000+00:00"


def test_a_record_that_stays_busy_is_a_fault(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """When another command does not let go in time, the wait ends in plain words."""
    monkeypatch.setattr("builder.doors.store.opening.WAIT_SECONDS", 0)
    with (
        opened(tmp_path) as holder,
        holder.transaction(),
        pytest.raises(Fault, match="locked"),
        opened(tmp_path),
    ):
        pass
