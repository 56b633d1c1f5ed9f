"""Stretches of a lesson in a question."""

import pytest

from builder.check.checks import lesson_lift
from tests.check.wording.written import course_of, question

LESSON = "# Stop\n\nThe client may **end the session** at any\nmoment and owes nobody a reason.\n"


@pytest.mark.parametrize(
    ("stem", "right", "path"),
    [
        ("The client may end the session at any moment and owes what?", "A reason", ("stem",)),
        ("What holds?", "The session at any moment and owes nobody a thing", ("one", "options", 0, "text")),
    ],
)
def test_a_long_stretch_is_told(stem: str, right: str, path: tuple[str | int, ...]) -> None:
    """In stem or right option, across lines and marks, with the lesson's name."""
    (found,) = lesson_lift.check(course_of(question(stem, right, "A fee"), lesson=LESSON))
    assert found.path == path
    assert "`lessons/cold.md`" in found.message


def test_seven_words_and_wrong_options_are_silent() -> None:
    """A shorter stretch, and one that misleads, are let be."""
    stem, wrong = "May the client end the session at any time?", LESSON.splitlines()[2]
    assert list(lesson_lift.check(course_of(question(stem, "Yes", wrong), lesson=LESSON))) == []
