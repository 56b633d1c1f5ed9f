"""What is said after a decision, told once."""

from builder.render.told import changes_of, told_rows
from tests.render.sample_cases import option_question, phase_question


def test_what_is_right_comes_first() -> None:
    """The right option leads, the others keep their order."""
    rows = told_rows(option_question("q2"))
    assert [row.options[0].id for row in rows] == ["pack", "glide", "rub"]
    assert [row.right for row in rows] == [row.key for row in rows] == [True, False, False]


def test_steps_come_in_their_right_order() -> None:
    """However they are shown, the first step is told first."""
    asked = option_question("q2").model_copy(update={"right": ("rub", "glide", "pack")})
    steps = asked.model_copy(update={"question": asked.question.model_copy(update={"kind": "order"})})
    assert [row.options[0].id for row in told_rows(steps)] == ["rub", "glide", "pack"]


def test_options_of_one_reason_share_a_row() -> None:
    """Two wrong phases with the same reason are told together; a mark that says right is not said twice."""
    rows = told_rows(phase_question())
    assert [[option.id for option in row.options] for row in rows] == [["p1"], ["p2", "p3"]]
    assert (rows[0].key, rows[0].right, rows[1].key) == (True, False, False)


def test_the_same_ground_is_not_repeated() -> None:
    """A row that rests on what the row before rests on does not say so again."""
    assert [bool(row.rests_on) for row in told_rows(phase_question())] == [True, False]


def test_every_option_is_told_of() -> None:
    """No option of a question is left without a word."""
    asked = option_question("q2")
    told = {option.id for row in told_rows(asked) for option in row.options}
    assert told == {option.id for option in asked.question.options}


def test_what_would_change_it_is_said_once() -> None:
    """The same change under two options is one line."""
    asked = option_question("q2")
    twice = asked.model_copy(update={"feedback": (*asked.feedback, *asked.feedback)})
    assert len(changes_of(twice)) == 1
