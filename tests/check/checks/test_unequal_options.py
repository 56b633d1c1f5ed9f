"""Options of unlike sort or size."""

import pytest

from builder.check.checks import unequal_options
from tests.check.wording.written import course_of, question, told

LONG = "after a written word from the doctor who saw it"


@pytest.mark.parametrize(
    "options",
    [
        ["20 minutes", "15 kg", "2 hours"],
        ["20 minutes", "blue", "soft"],
        ["No", "Yes", LONG],
    ],
)
def test_what_is_unlike_is_told_once(options: list[str]) -> None:
    """Quantities of two sorts, a quantity among words, and one wrong option that is far longer."""
    right, *wrong = options
    assert len(told(unequal_options, "How?", right, *wrong)) == 1


@pytest.mark.parametrize(
    "options",
    [
        ["20 minutes", "an hour", "2 days"],
        ["for one hour", "in the evening", "all day"],
        ["5", "10", "more than 20"],
        [LONG, "No", "Yes"],
        ["one short way", "a way that is longer", "a way"],
        ["1 to 5 minutes", "2 minutes of ice"],
    ],
)
def test_what_is_alike_is_silent(options: list[str]) -> None:
    """Times in numbers and in words are one sort; a long right answer is told by its own check."""
    right, *wrong = options
    assert told(unequal_options, "How?", right, *wrong) == []


def test_it_is_told_at_the_options() -> None:
    """All of them belong to the fault."""
    (found,) = unequal_options.check(course_of(question("How?", "No", "Yes", LONG)))
    assert found.path == ("one", "options")
