"""The first course of a new author, as README tells it: few commands, few files edited, nothing looked up."""

import os
import subprocess
import sys
from pathlib import Path

MOST_COMMANDS, MOST_FILES = 8, 3
INSTALL = 1  # the line of README that installs the tool; tests/test_wheel.py runs what it installs


class Author:
    """Someone who types commands and edits files; both are counted."""

    def __init__(self, desk: Path) -> None:
        self.desk = desk
        self.commands = INSTALL
        self.edited: set[str] = set()

    def types(self, *words: str) -> str:
        """Run one command in the folder where the author sits; it must do what it was asked."""
        self.commands += 1
        start = [sys.executable, "-c", "from builder.cli import main; main()"]
        done = subprocess.run(
            [*start, *words], cwd=self.desk, capture_output=True, text=True, encoding="utf-8", check=False,
            env={**os.environ, "LC_ALL": "C", "PYTHONPATH": str(Path.cwd())}, stdin=subprocess.DEVNULL,
        )  # fmt: skip
        assert done.returncode == 0, done.stdout + done.stderr
        return done.stdout

    def edits(self, file: str, changes: dict[str, str]) -> None:
        """Put the author's own words in place of what was only begun."""
        self.edited.add(file)
        path = self.desk / file
        text = path.read_text(encoding="utf-8")
        for old, new in changes.items():
            assert text.count(old) == 1, (old, text)
            text = text.replace(old, new)
        path.write_text(text, encoding="utf-8")


COURSE = "Mein erster Kurs"
STORY, NEXT = "Seit gestern Abend ist der Knöchel dick.", "Nach drei Tagen stand er wieder auf Stelzen."
TAUGHT, SHOWN = "Warm heißt: noch akut.", "Legt den Wickel an"
CASE = ("--region", "ankle", "--tissue", "ligament", "--injury", "sprain", "--since", "30 h", "--defaults")
EDITS = {
    "cases/der_stelzenlaufer.yml": {
        "It swelled within the hour, and I keep it up.": STORY,
        "Write here what happened to the client next.": NEXT,
    },
    "stations/wickel_am_fuss.yml": {"Carries it out": SHOWN},
    "lessons/warme_und_schwellung.md": {
        "Write here, in two sentences, what a participant can do after this page.": TAUGHT
    },
}


def test_from_an_empty_folder_to_a_built_course(tmp_path: Path) -> None:
    """One own case, one own station and one own lesson, in both sites."""
    author = Author(tmp_path)
    author.types("new", "course", COURSE, "--title", COURSE, "--defaults")
    author.types("new", "case", COURSE, "--title", "Der Stelzenläufer", *CASE)
    station = ("--title", "Wickel am Fuß", "--case", "der_stelzenlaufer", "--defaults")
    author.types("new", "station", COURSE, *station)
    author.types("new", "lesson", COURSE, "--title", "Wärme und Schwellung", "--defaults")
    for file, changes in EDITS.items():
        author.edits(f"{COURSE}/{file}", changes)
    assert "no errors" in author.types("check", COURSE)
    author.types("build", COURSE)
    assert author.commands <= MOST_COMMANDS
    assert len(author.edited) <= MOST_FILES
    out = tmp_path / COURSE / "out"
    assert STORY in pages(out / "publish" / "cases")
    assert TAUGHT in pages(out / "publish" / "lessons")
    assert SHOWN in pages(out / "private" / "instructor")


def pages(folder: Path) -> str:
    """All pages below a folder, one after another."""
    return "\n".join(path.read_text(encoding="utf-8") for path in sorted(folder.rglob("*.html")))
