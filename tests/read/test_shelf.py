"""What each sort of name may refer to."""

from pathlib import Path

from builder.model.case import Case
from builder.model.course import CourseFile
from builder.model.fact import FactBook
from builder.model.noun import Noun
from builder.read.shelf import Shelf
from builder.read.written import Entry, as_entry, read_written
from tests.read.folders import BASE


def entry(model: type[Noun], path: Path) -> Entry:
    """One file of the small course, or another."""
    return as_entry(model, read_written(path, path.name))


COURSE = entry(CourseFile, BASE / "course" / "course.yml")
FACTS = entry(FactBook, BASE / "content" / "facts.yml")


def test_names_come_from_files_as_written() -> None:
    """Ids of lists, keys of mappings and given groups are names."""
    shelf = Shelf((COURSE, FACTS))
    assert shelf.names["objective"] == {"choose"}
    assert shelf.names["test"] == {"final"}
    assert "fever" in shelf.names["fact"]
    assert shelf.names["group"] == {"hands_on", "techniques", "all"}
    assert shelf.names["case"] == set()


def test_a_broken_file_still_lends_its_name(tmp_path: Path) -> None:
    """A case with faults is known by id and by file name, so that its faults are not told again elsewhere."""
    (tmp_path / "thigh.yml").write_bytes(b"id: hip\n")
    shelf = Shelf((entry(Case, tmp_path / "thigh.yml"),))
    assert shelf.names["case"] == {"thigh", "hip"}
    assert shelf.noun(Case) is None
    assert [written.id for written in shelf.of(Case)] == ["hip"]


def test_one_bad_fact_does_not_hide_the_others(tmp_path: Path) -> None:
    """A fact whose declaration does not hold is known by name alone."""
    text = (BASE / "content" / "facts.yml").read_text(encoding="utf-8").replace("kind: scale", "kind: skale")
    (tmp_path / "facts.yml").write_text(text, encoding="utf-8")
    shelf = Shelf((entry(FactBook, tmp_path / "facts.yml"),))
    assert shelf.noun(FactBook) is None
    assert shelf.facts["heat"] is None
    assert shelf.facts["bend"] is not None
    assert shelf.attributes["minutes"] is not None
