"""Beginning a course and its files: what is written, listed, refused."""

from pathlib import Path

import pytest

from builder.fault import Fault
from builder.flow.build import build
from builder.flow.new import asked, begin
from builder.flow.opened import open_course
from tests.new.begun import TODAY, add, begun, course_in, faults, suggested


def test_a_new_course_is_clean_and_builds(tmp_path: Path) -> None:
    """No error and no warning, both sites, and a note of the author's is not published."""
    folder = begun(tmp_path / "Mein Kurs für Ältere")
    add("lesson", folder, "Warmth")
    opened = open_course(folder)
    assert opened.sound
    assert faults(folder) == []
    built = build(opened, folder, folder / "out")
    assert (built.publish / "index.html").is_file()
    assert "A note to you" not in (built.publish / "lessons" / "warmth.html").read_text(encoding="utf-8")


def test_nothing_is_written_over(tmp_path: Path) -> None:
    """Neither a folder that holds anything, nor a file, nor one that differs in case alone."""
    folder = begun(tmp_path / "course")
    before = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    with pytest.raises(Fault, match="not empty; nothing was written"):
        begun(folder)
    (folder / "cases" / "Mine.yml").write_text("format: 1\n", encoding="utf-8")
    with pytest.raises(Fault, match="already a case called Mine"):
        add("case", folder, "mine")
    (folder / "cases" / "Mine.yml").unlink()
    assert before == {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def test_an_empty_folder_may_become_a_course(tmp_path: Path) -> None:
    """It was made for that."""
    (tmp_path / "course").mkdir()
    assert course_in(begun(tmp_path / "course")).file.title == "Soft tissue by phase"


@pytest.mark.parametrize("name", ["con", "NUL", "aux.d"])
def test_a_folder_that_windows_cannot_have_is_refused(name: str, tmp_path: Path) -> None:
    """Before anything is written."""
    with pytest.raises(Fault, match="Windows can keep no"):
        begun(tmp_path / name)
    assert list(tmp_path.iterdir()) == []


def test_a_file_is_listed_where_the_course_lists_its_like(tmp_path: Path) -> None:
    """And the author's own notes in course.yml stay as they are, with CRLF at the line ends too."""
    folder = begun(tmp_path / "course")
    path = folder / "course.yml"
    text = path.read_text(encoding="utf-8")
    path.write_bytes(text.replace("\n", "\r\n").encode("utf-8"))
    add("case", folder, "Practised")
    add("case", folder, "Tested", use="test")
    add("case", folder, "Kept back", use="neither")
    add("lesson", folder, "Warmth: a 'sign'")
    add("station", folder, "Friction")
    add("board", folder, "A guild")
    file = course_in(folder).file
    assert file.practice[0].cases == ("first_bruise", "practised")
    assert file.tests[0].cases[-1] == "tested"
    assert [(one.file, one.title) for one in file.lessons] == [("warmth_a_sign.md", "Warmth: a 'sign'")]
    assert (file.requirements.stations, file.boards) == (("friction",), ("generic", "a_guild"))
    assert path.read_bytes().count(b"\n") == path.read_bytes().count(b"\r\n") == text.count("\n")


def test_where_it_cannot_be_listed_the_line_is_told(tmp_path: Path) -> None:
    """The course file is left as it is."""
    folder = begun(tmp_path / "course")
    path = folder / "course.yml"
    text = path.read_text(encoding="utf-8").replace("  stations: []", "  # none yet: stations")
    path.write_text(text, encoding="utf-8", newline="\n")
    said = add("station", folder, "Friction")
    assert "Not listed yet: add `friction` in course.yml under requirements, stations." in said
    assert path.read_text(encoding="utf-8") == text


def test_a_station_shows_no_case_that_a_test_keeps(tmp_path: Path) -> None:
    """Only the others are offered."""
    folder = begun(tmp_path / "course")
    (choice,) = [one for one in asked("station", folder, TODAY) if one.name == "case"]
    assert choice.choices == ("first_bruise",)


def test_a_span_that_is_none_is_told(tmp_path: Path) -> None:
    """With how to write it."""
    folder = begun(tmp_path / "course")
    with pytest.raises(Fault, match="is no span of time"):
        add("case", folder, "Mine", since="yesterday")


def test_a_course_with_errors_is_mended_first(tmp_path: Path) -> None:
    """A file for a course that cannot be read would be a guess."""
    folder = begun(tmp_path / "course")
    answers = suggested("rule", folder, {"title": "Mine"})
    (folder / "course.yml").write_text("format: 1\n", encoding="utf-8")
    with pytest.raises(Fault, match="errors to fix"):
        begin("rule", folder, answers, TODAY)
    with pytest.raises(Fault, match=r"holds no course\.yml"):
        begin("rule", tmp_path / "elsewhere", answers, TODAY)
