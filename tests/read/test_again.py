"""Reading again: the same for the same bytes, and never what no longer stands there."""

import os
from pathlib import Path

from builder.model.case import Case
from builder.read.again import Rereader
from builder.read.written import read_entry
from tests.demo.small import small


def test_a_file_is_read_again_only_when_its_bytes_change(tmp_path: Path) -> None:
    """Even where its time and size say that nothing has changed."""
    path, again = tmp_path / "a.yml", Rereader()
    text = (small() / "cases" / "stilt_ankle.yml").read_text(encoding="utf-8")
    path.write_text(text, encoding="utf-8")
    first = again(Case, path, "cases/a.yml")
    assert first == read_entry(Case, path, "cases/a.yml")
    assert again(Case, path, "cases/a.yml") is first
    about = path.stat()
    path.write_text(text.replace("mechanism", "mechanizm"), encoding="utf-8")
    os.utime(path, ns=(about.st_atime_ns, about.st_mtime_ns))
    second = again(Case, path, "cases/a.yml")
    assert second == read_entry(Case, path, "cases/a.yml")
    assert second.noun is None


def test_a_file_that_goes_is_told_of_and_comes_back(tmp_path: Path) -> None:
    """What cannot be read is no entry of before."""
    path, again = tmp_path / "a.yml", Rereader()
    path.write_bytes((small() / "cases" / "stilt_ankle.yml").read_bytes())
    first = again(Case, path, "cases/a.yml")
    path.unlink()
    assert [one.check for one in again(Case, path, "cases/a.yml").found] == ["file_unreadable"]
    path.write_bytes((small() / "cases" / "stilt_ankle.yml").read_bytes())
    assert again(Case, path, "cases/a.yml") == first
