"""`caseloom new`: by options, by answering, and where nobody can answer."""

from pathlib import Path

import click
import pytest

from builder.cli.new import THINGS
from tests.cli.run import run, status


def test_a_first_course_by_options_alone(tmp_path: Path) -> None:
    """From nothing to a clean course with an own case; every command says what it wrote and what is next."""
    folder = tmp_path / "my course"
    done = run("new", "course", folder, "--title", "My course", "--defaults")
    assert status(done) == 0
    assert "course.yml" in done.output
    done = run("new", "case", folder, "--title", "My case", "--region", "calf", "--defaults")
    assert status(done) == 0
    assert "my_case.yml" in done.output
    assert "Listed in course.yml" in done.output
    assert "caseloom check" in done.output
    assert status(run("check", folder)) == 0


def test_where_nobody_can_answer_what_is_missing_is_named(tmp_path: Path) -> None:
    """All of it at once, with the way out."""
    with pytest.raises(click.UsageError, match=r"Give --title, --provider.*--defaults"):
        status(run("new", "course", tmp_path / "course"))
    assert not (tmp_path / "course").exists()
    assert status(run("new", "course", tmp_path / "course", "--defaults")) == 0
    with pytest.raises(click.UsageError, match=r"Give --title; --defaults"):
        status(run("new", "lesson", tmp_path / "course", "--defaults"))
    assert not (tmp_path / "course" / "lessons").exists()


def test_what_is_not_given_is_asked(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """With what is suggested beside each question."""
    asked = []

    def typed(words: str, *, default: str | None, type: object) -> str:  # noqa: A002, ARG001 - click's own name
        asked.append(words)
        return default or "Typed"

    monkeypatch.setattr("click.prompt", typed)
    monkeypatch.setattr("builder.cli.new._can_ask", lambda: True)
    assert status(run("new", "course", tmp_path / "wagon_course", "--licence", "Physiotherapist")) == 0
    assert asked == ["Its title", "Who offers it (the name of your business)", "Who teaches it"]
    text = (tmp_path / "wagon_course" / "course.yml").read_text(encoding="utf-8")
    assert "title: Wagon course" in text
    assert "licence: Physiotherapist" in text


def test_an_answer_that_is_none_is_refused_with_those_that_are(tmp_path: Path) -> None:
    """A misspelt region is told with the regions."""
    folder = tmp_path / "course"
    status(run("new", "course", folder, "--title", "My course", "--defaults"))
    with pytest.raises(click.UsageError, match=r"cannot be 'tigh'. It may be: thigh"):
        status(run("new", "case", folder, "--title", "A", "--region", "tigh", "--defaults"))


def test_an_id_of_ones_own_is_taken(tmp_path: Path) -> None:
    """Where the title has no plain letters, or another name is wished for."""
    folder = tmp_path / "course"
    status(run("new", "course", folder, "--title", "筋膜", "--id", "fascia", "--defaults"))
    status(run("new", "lesson", folder, "--title", "熱", "--id", "warmth", "--defaults"))
    assert (folder / "lessons" / "warmth.md").is_file()


@pytest.mark.parametrize("kind", THINGS)
def test_each_thing_has_its_help(kind: str) -> None:
    """It names every option."""
    said = run("new", kind, "--help").output
    assert all(f"--{name}" in said for name in (*THINGS[kind][1], "id", "defaults"))
