"""`caseloom grade`: decisions written, or only tried."""

from pathlib import Path

from tests.cli.classwork import on_class
from tests.cli.run import status


def test_trying_writes_nothing_and_grading_writes_once(tmp_path: Path) -> None:
    """`--try` shows the decisions; a grading after it still finds all of them new."""
    on_class("collect", tmp_path)
    assert status(on_class("grade", tmp_path, "--try")) == 0
    assert "8 decisions new" in on_class("grade", tmp_path).output
    assert "0 decisions new" in on_class("grade", tmp_path).output
