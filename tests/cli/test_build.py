"""`caseloom build` writes both sites, and says where."""

import json
from pathlib import Path

from tests.cli.run import run, status
from tests.demo.small import small, small_course


def test_both_sites_are_written_where_told(tmp_path: Path) -> None:
    """The data names the published folder and the edition of each test."""
    done = run("build", small(), "--out", tmp_path / "out", "--json")
    assert status(done) == 0
    data = json.loads(done.output)
    assert (Path(data["publish"]) / "index.html").is_file()
    assert set(data["editions"]) == {"final"}
    assert (tmp_path / "out" / "private" / "instructor" / "index.html").is_file()


def test_a_broken_course_is_listed_and_not_built(tmp_path: Path) -> None:
    """What is to fix is printed, status 1, and nothing is written."""
    copy = small_course(tmp_path / "course")
    (copy / "cases" / "stilt_ankle.yml").write_text("format: 1\nid: stilt_ankle\n", encoding="utf-8")
    done = run("build", copy, "--out", tmp_path / "out")
    assert status(done) == 1
    assert "cases/stilt_ankle.yml" in done.output
    assert not (tmp_path / "out").exists()
