"""Names in a course folder that another system could not keep."""

from pathlib import Path

import pytest

from builder.read.portable import names_not_kept
from tests.read.folders import changed
from tests.read.test_folder import made


def told(root: Path) -> list[tuple[str, str]]:
    """Check and file of every such name."""
    return [(one.check, one.place.file) for one in names_not_kept(root)]


@pytest.mark.parametrize(
    "file",
    ["cases/con.yml", "rules/aux.yml", "lessons/com1.md", "media/pad .", "media/why?.png", "boards/NUL.txt"],
)
def test_a_file_that_windows_cannot_keep_is_named(file: str, tmp_path: Path) -> None:
    """Wherever in the course it lies; the remedy says what may be in a name."""
    (found,) = names_not_kept(made(tmp_path, file, "cases/thigh.yml"))
    assert (found.check, found.place.file, found.level) == ("name_not_kept", file, "error")
    assert "letters, digits, - and _" in found.remedy


def test_folders_are_names_too(tmp_path: Path) -> None:
    """And what lies in them is still looked at."""
    root = made(tmp_path, "classes/prn/Roster.csv", "classes/prn/roster.csv")
    assert told(root) == [("name_not_kept", "classes/prn/"), ("name_in_two_cases", "classes/prn/roster.csv")]


def test_names_that_differ_by_capitals_or_stored_accents_alone(tmp_path: Path) -> None:
    """The second of each is named, with the first beside it."""
    root = made(tmp_path, "cases/Thigh.yml", "cases/thigh.yml", "media/bru\u0308se.png", "media/brüse.png")
    found = list(names_not_kept(root))
    assert [(one.check, one.place.file) for one in found] == [
        ("name_in_two_cases", "cases/thigh.yml"),
        ("name_in_two_cases", "media/brüse.png"),
    ]
    assert [near.place.file for one in found for near in one.related] == [
        "cases/Thigh.yml",
        "media/bru\u0308se.png",
    ]


def test_what_is_built_or_hidden_is_let_be(tmp_path: Path) -> None:
    """And the same name in two folders is no clash."""
    assert told(made(tmp_path, "out/aux.html", "private/con", ".x/nul", "cases/a.yml", "rules/a.yml")) == []


def test_a_test_may_not_be_called_what_no_page_can_be(tmp_path: Path) -> None:
    """Its id stands in the address of its page."""
    reading = changed(tmp_path, "course/course.yml", "  - id: final", "  - id: nul")
    found = [one for one in reading.found if one.check == "name_not_kept"]
    assert [(one.place.file, one.path) for one in found] == [("course.yml", ("tests", 0, "id"))]
