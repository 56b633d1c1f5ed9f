"""Nothing hangs on one system's line ends, locale, folders or letters."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from builder.flow.build import build
from builder.flow.opened import open_course
from tests.new.begun import add, begun, faults


def caseloom(environment: dict[str, str], *arguments: str) -> subprocess.CompletedProcess[bytes]:
    """The real program under another environment, its output as bytes."""
    start = [sys.executable, "-c", "from builder.cli import main; main()"]
    kept = {key: value for key, value in os.environ.items() if not key.startswith(("LC_", "LANG", "PYTHON"))}
    return subprocess.run(
        [*start, *arguments], env={**kept, **environment}, capture_output=True, check=False,
        stdin=subprocess.DEVNULL,
    )  # fmt: skip


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A course in a folder with a space and accents, with a case whose title no old code page has."""
    course = begun(tmp_path / "Kurs für Ältere" / "Soft tissue ñ", "Łódź – Übung")
    add("case", course, "Štilts of Łódź 熱", id="stilts")
    return course


def test_every_file_may_have_either_line_end(folder: Path) -> None:
    """A course saved on Windows, with CRLF and a mark in front, checks and builds the same."""
    before = build(open_course(folder), folder, folder / "out")
    for path in [*folder.rglob("*.yml"), *folder.rglob("*.md")]:
        text = path.read_bytes().replace(b"\r\n", b"\n").replace(b"\n", b"\r\n")
        path.write_bytes(b"\xef\xbb\xbf" + text)
    assert faults(folder) == []
    again = build(open_course(folder), folder, folder.parent / "again")
    assert again.editions == before.editions
    assert again.pages == before.pages


@pytest.mark.parametrize(
    "environment",
    [{"LC_ALL": "C"}, {"LC_ALL": "POSIX", "LANG": "C"}, {}],
    ids=["C", "POSIX", "nothing set"],
)
def test_it_runs_under_any_locale(environment: dict[str, str], folder: Path) -> None:
    """Files are UTF-8 whatever the locale says."""
    done = caseloom(environment, "check", str(folder))
    assert done.returncode == 0, done.stderr
    made = caseloom(environment, "new", "lesson", str(folder), "--title", "Wärme", "--defaults")
    assert made.returncode == 0, made.stderr
    assert "title: Wärme" in (folder / "course.yml").read_text(encoding="utf-8")


@pytest.mark.parametrize("encoding", ["ascii", "cp1252", "cp437"])
def test_a_terminal_without_the_letters_shows_what_it_can(encoding: str, folder: Path) -> None:
    """On an old code page a letter that is not there becomes a mark; nothing fails."""
    path = folder / "cases" / "stilts.yml"
    text = path.read_text(encoding="utf-8").replace("mechanism:", "mechanizm: 熱 Łódź #", 1)
    path.write_text(text, encoding="utf-8")
    for arguments in (["check", str(folder)], ["explain", str(folder), "no_such_case"]):
        done = caseloom({"PYTHONIOENCODING": encoding}, *arguments)
        assert done.returncode in (1, 2)
        assert b"something went wrong" not in done.stderr
        assert b"mechanizm" in done.stdout or b"no_such_case" in done.stderr
