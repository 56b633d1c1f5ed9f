"""Small agreements between files."""

from pathlib import Path

import pytest

from tests.read.folders import changed, put, read


@pytest.mark.parametrize(
    ("file", "old", "new", "check", "line"),
    [
        ("course/stations/cooling.yml", "visit: first", "visit: second", "visit_unknown", 5),
        ("course/stations/cooling.yml", "id: cooling", "id: ice", "id_not_file_name", 2),
        (
            "course/cases/thigh.yml",
            "{set: short}",
            "{set: short, all_no_except: {numb: yes}}",
            "not_screened",
            14,
        ),
        ("content/screening.yml", "[fever]", "[fever, heat]", "screen_not_yes_no", 3),
        ("content/facts.yml", "  numb:", "  any:", "fact_name_reserved", 9),
        ("content/facts.yml", "  barrier:", "  recorded:", "fact_name_reserved", 12),
    ],
)
def test_what_does_not_agree_is_told(
    file: str, old: str, new: str, check: str, line: int, tmp_path: Path
) -> None:
    """Visits of stations, names of files, exceptions of screens, and names that conditions need."""
    found = changed(tmp_path / "root", file, old, new).found
    assert (check, line) in [(one.check, one.place.line) for one in found]


def test_exceptions_of_an_unknown_set_are_let_be(tmp_path: Path) -> None:
    """The set is told; what it would have asked cannot be known."""
    new = "{set: shirt, all_no_except: {numb: yes}}"
    found = changed(tmp_path / "root", "course/cases/thigh.yml", "{set: short}", new).found
    assert [one.check for one in found] == ["screening_set_unknown"]


def test_a_set_asks_for_what_it_includes(tmp_path: Path) -> None:
    """An exception of an included set is no fault."""
    short = '  short: {name: S, date: "1", includes: [long]}\n'
    sets = f'format: 1\nsets:\n{short}  long: {{name: L, date: "1", covers: [numb]}}\n'
    root = put(tmp_path / "root", {"content/screening.yml": sets})
    text = (root / "course/cases/thigh.yml").read_text(encoding="utf-8")
    case = text.replace("{set: short}", "{set: short, all_no_except: {numb: yes}}")
    assert read(put(root, {"content/screening.yml": sets, "course/cases/thigh.yml": case})).found == []


def test_a_lesson_nobody_lists_is_advice(tmp_path: Path) -> None:
    """A page that nothing leads to is pointed out, and hinders nothing."""
    reading = read(put(tmp_path / "root", {"course/lessons/warm.md": "# Warm\n"}))
    assert [(one.check, one.level, one.place.line) for one in reading.found] == [
        ("lesson_not_listed", "advice", 13)
    ]
    assert reading.course is not None
