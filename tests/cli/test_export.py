"""`caseloom export` writes files that stand by themselves, and says where."""

import json
from pathlib import Path

from tests.cli.run import run, status
from tests.demo.small import small, small_course


def test_a_version_is_written_where_told(tmp_path: Path) -> None:
    """Its file is named, for a person and for a program."""
    done = run("export", small(), "test", "final", "A", "--out", tmp_path)
    path = tmp_path / "private" / "handouts" / "final-a.html"
    assert status(done) == 0
    assert done.output == f"Wrote {path}\n"
    again = run("export", small(), "case", "unicycle_thigh", "--out", tmp_path, "--json")
    assert json.loads(again.output)["files"] == [path.with_name("unicycle-thigh.html").as_posix()]


def test_a_broken_course_is_listed_and_not_exported(tmp_path: Path) -> None:
    """What is to fix is printed, status 1, and nothing is written."""
    copy = small_course(tmp_path / "course")
    (copy / "cases" / "stilt_ankle.yml").write_text("format: 1\nid: stilt_ankle\n", encoding="utf-8")
    done = run("export", copy, "test", "--out", tmp_path / "out")
    assert status(done) == 1
    assert "cases/stilt_ankle.yml" in done.output
    assert not (tmp_path / "out").exists()
