"""Ids that stand twice."""

from pathlib import Path

import pytest

from tests.read.folders import BASE, changed, put, read

C, S = "course/course.yml", "course/stations/cooling.yml"
CRITERION = "  - {id: cloth, title: Cloth, levels: [None, A cloth]}\n"
FAIL = "  - {id: bare_skin, seen: The pack lay on bare skin.}\n"
SIGN = (
    "{id: warm, when: {heat: none}, no_later_than: acute, text: T, source: [own_default], strength: expert}"
)


@pytest.mark.parametrize(
    ("file", "old", "new"),
    [
        (C, "objectives:\n", "objectives:\n  - {id: choose, text: Choose.}\n"),
        (C, "lessons:\n", "lessons:\n  - {file: cold.md, title: A}\n"),
        (
            C,
            "tests:\n",
            "practice: [{id: a, title: A, cases: [thigh]}, {id: a, title: B, cases: [thigh]}]\ntests:\n",
        ),
        (S, CRITERION, CRITERION * 2),
        (S, FAIL, FAIL * 2),
        ("content/phases.yml", "signs:\n", f"signs:\n  - {SIGN}\n"),
        ("content/phases.yml", "aims: ", f"doubt: [{SIGN}, {SIGN}]\naims: "),
    ],
)
def test_an_id_is_given_once_in_its_list(file: str, old: str, new: str, tmp_path: Path) -> None:
    """Objectives, lessons, practice sets, criteria, automatic fails and signs."""
    (fault,) = changed(tmp_path / "root", file, old, new).found
    assert fault.check == "id_twice"
    assert fault.related[0].place < fault.place


def test_an_id_is_given_once_among_files_of_one_sort(tmp_path: Path) -> None:
    """A course's own rule cannot take a shipped rule's id, wherever its file lies."""
    rule = (BASE / "content/rules/numb_cold.yml").read_bytes()
    reading = read(put(tmp_path / "root", {"course/rules/own/numb_cold.yml": rule}))
    (fault,) = reading.found
    assert (fault.check, fault.place.file) == ("id_twice", "rules/own/numb_cold.yml")
    assert fault.related[0].place.file == "content/rules/numb_cold.yml"
    assert reading.course is not None
    assert reading.course.content.own_rules == frozenset()


def test_what_is_no_id_is_not_held_twice(tmp_path: Path) -> None:
    """A number where an id belongs is told as such, not as given twice."""
    found = changed(tmp_path / "root", S, CRITERION, CRITERION.replace("cloth,", "3,") * 2).found
    assert [one.check for one in found if one.place.file == "stations/cooling.yml"] == ["text_expected"] * 2


def test_files_of_two_sorts_may_share_an_id(tmp_path: Path) -> None:
    """A station may be called like a case."""
    station = (BASE / S).read_text(encoding="utf-8").replace("id: cooling", "id: thigh")
    assert read(put(tmp_path / "root", {"course/stations/thigh.yml": station})).found == []
