"""The text of every new file."""

from pathlib import Path

import pytest

from builder.new.kinds import KINDS, QUESTIONS
from builder.read.taught import read_class
from tests.new.begun import add, begun, course_in, faults
from tests.read.editor.shapes import refusals, validators, written

TITLES = ["Plain", 'Wärme: "Kälte" & #1 {a}']


@pytest.mark.parametrize("title", TITLES)
def test_every_new_file_passes_as_it_is(title: str, tmp_path: Path) -> None:
    """One of each sort, every sort of question among them: no error and no warning."""
    folder = begun(tmp_path / "A course é", title)
    for kind in sorted(set(KINDS) - {"question"}):
        add(kind, folder, title)
    for number, kind in enumerate(QUESTIONS):
        add("question", folder, f"{title} {number}", kind=kind)
    assert faults(folder) == []
    course = course_in(folder)
    (taught,) = (folder / "classes").iterdir()
    assert read_class(taught, course).found == []


@pytest.mark.parametrize("kind", ["case", "station", "question", "rule", "card", "board"])
def test_a_new_file_is_commented_and_bound_to_its_schema(kind: str, tmp_path: Path) -> None:
    """The first line leads an editor to the schema, which accepts the file."""
    folder = begun(tmp_path / "course")
    add(kind, folder, "Mine")
    path = folder / KINDS[kind].folder / "mine.yml"
    first = path.read_text(encoding="utf-8").splitlines()[0]
    assert first == f"# yaml-language-server: $schema=../.caseloom/schema/{kind}.json"
    assert (path.parent / first.partition("=")[2]).is_file()
    schema = validators(Path("content").resolve(), folder)[kind]
    assert refusals(schema, written(path)) == []


def test_the_course_and_a_class_are_bound_too(tmp_path: Path) -> None:
    """Wherever the file lies, its first line finds the schema."""
    folder = begun(tmp_path / "course")
    add("class", folder, "Spring")
    for path in (folder / "course.yml", folder / "classes" / "spring" / "class.yml"):
        first = path.read_text(encoding="utf-8").splitlines()[0]
        assert (path.parent / first.partition("$schema=")[2]).is_file()
