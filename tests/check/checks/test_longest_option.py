"""A right answer that its length gives away."""

import pytest

from builder.check.checks import longest_option
from tests.check.wording.written import course_of, question, told
from tests.judge.small import case

LONG = "ask about thinners, thin skin and any fall"


@pytest.mark.parametrize(
    ("right", "wrong", "said"),
    [
        (LONG, ["rest", "cool", "go on"], 1),
        (LONG, ["rest", "cool", "go on with the work as it was planned"], 0),
        ("ask about thinners", ["rest", "cool it", "go on"], 0),
        ("rest", [LONG, LONG + " too"], 0),
        ([LONG, LONG + " at all"], ["rest", "cool"], 1),
        ([LONG, "ask"], ["rest", "cool"], 0),
    ],
)
def test_what_stands_out_is_told_once(right: str | list[str], wrong: list[str], said: int) -> None:
    """By ratio and by words; of several right answers the shortest counts."""
    assert len(told(longest_option, "What first?", right, *wrong)) == said


def test_it_is_told_at_the_right_answer() -> None:
    """The place is the option, the message its count of words."""
    (found,) = longest_option.check(course_of(question("What first?", LONG, "rest", "cool")))
    assert (found.file, found.path) == ("questions/asked.yml", ("one", "options", 0, "text"))
    assert "8 words" in found.message


def test_options_of_a_case_count_as_they_are_shown() -> None:
    """A visit whose right option is written out and whose wrong ones are bare is told at the right one."""
    cold = {"card": "cold", "written": {"minutes": 10, "barrier": "yes"}}
    bare, fully = {"card": "stroke"}, {"card": "stroke", "site": "adjacent"}
    (found,) = longest_option.check(course_of(cases=[case({"chosen": [cold], "wrong": [bare]})]))
    assert (found.file, found.path) == ("cases/bruise.yml", ("visits", 0, "chosen", 0))
    plain = case({"chosen": [{"card": "protect"}], "wrong": [fully]})
    assert list(longest_option.check(course_of(cases=[plain]))) == []
