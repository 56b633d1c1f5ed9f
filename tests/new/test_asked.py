"""The few facts that are asked for."""

from pathlib import Path

import pytest

from builder.cli.new import THINGS
from builder.new.asked import about, about_course, since
from builder.new.kinds import KINDS
from tests.new.begun import TODAY, begun, course_in


@pytest.mark.parametrize("kind", KINDS)
def test_what_is_asked_may_be_given_as_an_option(kind: str, tmp_path: Path) -> None:
    """The command knows each question by name; a suggestion is one of the choices."""
    askings = about(kind, course_in(begun(tmp_path / "course")), TODAY)
    assert tuple(one.name for one in askings) == THINGS[kind][1]
    assert all(one.suggested in one.choices for one in askings if one.choices and one.suggested)
    assert tuple(one.name for one in about_course("course")) == THINGS["course"][1]


@pytest.mark.parametrize(
    ("folder", "title"),
    [
        ("Wagon course", "Wagon course"),
        ("my_first-course", "My first course"),
        ("ärzte", "Ärzte"),
        ("_", None),
    ],
)
def test_a_course_may_be_called_as_its_folder_is(folder: str, title: str | None) -> None:
    """Its title is suggested; everything else can be changed in the file."""
    assert about_course(folder)[0].suggested == title
    assert all(one.suggested for one in about_course(folder)[1:])


def test_how_long_ago_is_what_is_usual_for_the_injury() -> None:
    """Unless it was said."""
    assert since({"since": "6 h", "injury": "strain"}) == "6 h"
    assert since({"since": "as usual for the injury", "injury": "tendinopathy"}) == "6 weeks"
