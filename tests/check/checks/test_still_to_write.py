"""What a new file only begins with."""

from dataclasses import replace

from builder.check.checks.still_to_write import check
from builder.place import Place, Places
from tests.check.small_course import evidence


def told(file: str, *lines: str) -> list[tuple[str, int, int]]:
    """What is said of a file, with line and column."""
    made = evidence()
    places = {file: Places(Place(file), lines=lines)}
    found = check(replace(made, course=replace(made.course, places=places)))
    return [(one.message, one.line, one.column) for one in found]


def test_what_is_left_is_counted_and_placed() -> None:
    """One finding a file, at the first of its lines."""
    lines = ("id: a", "refund: Write here when a fee is paid back.", "next: Write here what came next.")
    assert told("course.yml", *lines) == [("2 texts are still to be written: lines 2, 3.", 2, 9)]
    assert told("cases/a.yml", "story: Write here what was said.") == [
        ("One text is still to be written: line 1.", 1, 8)
    ]


def test_comments_and_notes_are_the_authors_own() -> None:
    """Only what is read or published counts; the tool's own files are not the author's."""
    assert told("course.yml", "name: Ida  # Write here who it is") == []
    assert told("lessons/a.md", "<!-- Write here", "or there. -->", "# Cold") == []
    assert told("content/facts.yml", "label: Write here") == []


def test_of_many_the_first_are_listed() -> None:
    """So that it can be read."""
    (only,) = told("lessons/a.md", *["- Write here the first sign."] * 12)
    assert only[0] == "12 texts are still to be written: lines 1, 2, 3, 4, 5, 6, 7, 8, and 4 more."
