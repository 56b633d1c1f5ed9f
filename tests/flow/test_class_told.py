"""A class with what is to fix in it, and what of that is accepted with a reason."""

from collections.abc import Mapping
from pathlib import Path

import pytest

from builder.flow.class_told import ClassTold, told_class
from builder.read.course import read_course
from tests.read.folders import BASE, put

MAY = "course/classes/may/"
CODE = "QZVNRBLAD"
ROSTER, SHEET = MAY + "roster.csv", MAY + "stations/vantornel.yml"
ODD = "\naccepted:\n  - {check: %s, file: roster.csv, code: %s, because: As it was given.}\n"


def told(root: Path, changes: Mapping[str, tuple[str, str]], more: str = "") -> ClassTold:
    """The small class with a text in some of its files changed, and more at the end of `class.yml`."""
    files = {name: (BASE / name).read_text(encoding="utf-8") for name in (*changes, MAY + "class.yml")}
    for name, (old, new) in changes.items():
        assert old in files[name]
        files[name] = files[name].replace(old, new)
    files[MAY + "class.yml"] += more
    course, _ = read_course(BASE / "course", BASE / "content")
    assert course is not None
    return told_class(put(root, files) / MAY, course)


def checks(one: ClassTold) -> list[tuple[str, str]]:
    """Name and reason of everything."""
    return [(found.check, found.accepted) for found in one.to_fix]


@pytest.fixture
def odd() -> dict[str, tuple[str, str]]:
    """An address that does not look like one."""
    return {
        ROSTER: (
            f"licence,code_1\nBea Vantornel,00123,{CODE}",
            f"licence,code_1,email\nBea,00123,{CODE},hall",
        )
    }


def test_a_row_of_a_sheet_is_accepted_in_the_class_file(
    odd: dict[str, tuple[str, str]], tmp_path: Path
) -> None:
    """By the name that is printed, the sheet, and a code in the row; the code as a person types it."""
    before = told(tmp_path / "before", odd)
    assert checks(before) == [("email_odd", "")]
    assert before.left == ("Still to look at in the files of this class: 1. Run check with --class.",)
    after = told(tmp_path / "after", odd, ODD % ("email_odd", CODE.lower()))
    assert checks(after) == [("email_odd", "As it was given.")]
    assert after.json()["accepted"][0]["because"] == "As it was given."
    assert after.text().endswith("Nothing to fix. 1 accepted with a reason.")
    assert after.left == ()


def test_a_station_sheet_is_accepted_where_it_stands(tmp_path: Path) -> None:
    """It is YAML, so a comment says it."""
    without = {SHEET: ("marked: {cloth: 1}", "marked: {}")}
    assert checks(told(tmp_path / "before", without)) == [("criterion_not_marked", "")]
    said = "marked: {}  # accepted: criterion_not_marked, because the lamp went out"
    after = told(tmp_path / "after", {SHEET: (without[SHEET][0], said)})
    assert checks(after) == [("criterion_not_marked", "the lamp went out")]


@pytest.mark.parametrize(
    ("check", "of", "found"),
    [
        ("email_odd", "4HWLR4B3H", "accept_unused"),
        ("person_twice", "", "accept_unused"),
        ("email_od", "", "accept_unknown"),
        ("code_wrong", "", "accept_not_allowed"),
    ],
)
def test_what_accepts_nothing_is_told(
    check: str, of: str, found: str, odd: dict[str, tuple[str, str]], tmp_path: Path
) -> None:
    """A code that no such row has, a name that is not found there or is none, and an error."""
    one = told(tmp_path, odd, ODD % (check, of or CODE))
    assert sorted(checks(one)) == sorted([("email_odd", ""), (found, "")])
    assert [place.place.file for place in one.to_fix if place.check == found] == ["classes/may/class.yml"]


def test_an_error_is_never_accepted(tmp_path: Path) -> None:
    """A class with one cannot be used, whatever its file says."""
    wrong = {ROSTER: (CODE, "QZVNRBLAE")}
    one = told(tmp_path, wrong, ODD % ("code_wrong", CODE))
    assert not one.sound
    assert "code_wrong" in one.text()


def test_a_class_without_its_file_is_no_class(tmp_path: Path) -> None:
    """What is wrong is told all the same."""
    one = told(tmp_path, {MAY + "class.yml": ("format: 1", "format: 2")})
    assert one.folder is None
    assert not one.sound
    assert one.to_fix
