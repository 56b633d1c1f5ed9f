"""The tool's own fingerprint: the same within one installation, another after any change to it."""

import subprocess
import sys
from pathlib import Path

import pytest

from builder.doors import tool


def test_it_is_the_same_in_another_process() -> None:
    """Nothing of it hangs on the process or its hash seed."""
    said = subprocess.run(
        [sys.executable, "-c", "from builder.doors.tool import *; print(tool_fingerprint())"],
        capture_output=True,
        text=True,
        check=True,
        cwd=Path(tool.__file__).parents[2],
    )
    assert said.stdout.strip() == tool.tool_fingerprint()


def test_a_change_of_a_file_or_of_its_name_changes_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Compiled files and shipped content do not count: content is part of the input."""
    monkeypatch.setattr(tool, "files", lambda _: tmp_path)
    fresh = tool.tool_fingerprint.__wrapped__
    (tmp_path / "a.py").write_text("1", encoding="utf-8")
    first = fresh()
    for folder in ("__pycache__", "_data"):
        (tmp_path / folder).mkdir()
        (tmp_path / folder / "b").write_text("x", encoding="utf-8")
    assert fresh() == first
    (tmp_path / "a.py").write_text("2", encoding="utf-8")
    second = fresh()
    (tmp_path / "a.py").rename(tmp_path / "c.py")
    assert len({first, second, fresh()}) == 3


def test_a_library_that_is_not_there_is_named_all_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    """Its coming makes a new fingerprint."""
    monkeypatch.setattr(tool, "LIBRARIES", ("no-such-library-of-anyone",))
    assert tool.tool_fingerprint.__wrapped__() != tool.tool_fingerprint()
