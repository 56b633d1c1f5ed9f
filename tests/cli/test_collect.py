"""`caseloom collect`: status 0 when every sheet was taken, 1 when one was left."""

from pathlib import Path

from pytest import MonkeyPatch  # noqa: PT013 - the type alone is needed

from tests.cli.classwork import on_class
from tests.cli.run import status


def test_all_sheets_are_taken(tmp_path: Path) -> None:
    """Nine files, nine taken."""
    done = on_class("collect", tmp_path)
    assert status(done) == 0
    assert "9 taken" in done.output


def test_a_sheet_that_was_left_is_status_one(tmp_path: Path, monkeypatch: MonkeyPatch) -> None:
    """A file that could not be taken makes the command answer 1."""
    monkeypatch.setattr("builder.flow.records.collect", lambda _: (["left  odd.json"], False))
    assert status(on_class("collect", tmp_path)) == 1
