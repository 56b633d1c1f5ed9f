"""Lessons as text."""

from pathlib import Path

from builder.read.lessons import read_lesson


def test_a_lesson_is_its_text(tmp_path: Path) -> None:
    """Line ends and a byte-order mark are evened out; lines are kept for carets."""
    (tmp_path / "a.md").write_bytes(b"\xef\xbb\xbf# Cold\r\n\r\nText\r\n")
    lesson = read_lesson(tmp_path / "a.md", "lessons/a.md")
    assert (lesson.value, lesson.stem, lesson.found) == ("# Cold\n\nText\n", "a", ())
    assert lesson.places.lines[:3] == ("# Cold", "", "Text")


def test_what_is_no_text_is_placed(tmp_path: Path) -> None:
    """A byte of another encoding and a missing file are things to fix."""
    (tmp_path / "a.md").write_bytes("Caf\xe9".encode("latin-1"))
    lesson = read_lesson(tmp_path / "a.md", "lessons/a.md")
    assert [(one.check, one.place.column) for one in lesson.found] == [("not_utf8", 4)]
    missing = read_lesson(tmp_path / "b.md", "lessons/b.md")
    assert (missing.value, [one.check for one in missing.found]) == ("", ["file_unreadable"])
