"""Pictures of lessons are files in `media/`."""

from dataclasses import replace

import pytest

from builder.check.checks.picture_missing import check
from tests.check.wording.written import course_of


@pytest.mark.parametrize(
    ("target", "remedy"),
    [
        ("../media/pad.png", None),
        ("../media/pda.png", "Did you mean `../media/pad.png`?"),
        ("media/pad.png", "Did you mean `../media/pad.png`?"),
        ("../media/PAD.png", "Did you mean `../media/pad.png`?"),
        ("https://circus.example/a", "Put the file"),
    ],
)
def test_only_a_file_of_the_course_is_fine(target: str, remedy: str | None) -> None:
    """Another name, another letter case, another folder or the network: found at its line."""
    made = course_of(lesson=f"Words.\n\nSee ![a pad]({target}) here.\n")
    found = list(check(replace(made, course=replace(made.course, media=frozenset({"media/pad.png"})))))
    assert [(one.file, one.line, one.column) for one in found] == (
        [("lessons/cold.md", 3, 5)] if remedy else []
    )
    assert all(one.remedy.startswith(remedy or "") for one in found)
