"""Study time by formula: Mergener 1991, American Journal of Pharmaceutical Education 55:263-266."""

from decimal import Decimal

import pytest

from builder.model.hours import study_minutes


def test_the_published_example() -> None:
    """3,774 words, 16 questions, difficulty 2.5: 61.93589 minutes (a nursing association's sheet).

    The sheet prints its formula with +22.3; that would give 102.08 and contradicts its own result.
    """
    minutes = study_minutes(3774, 16, Decimal("2.5"))
    assert minutes == Decimal("61.935894")
    assert minutes != Decimal("102.075894")
    assert minutes / Decimal("0.9") == Decimal("68.81766")


@pytest.mark.parametrize(
    ("difficulty", "minutes"), [(2, "54.960894"), (3, "68.910894"), (4, "82.860894"), (1, "41.010894")]
)
def test_each_step_of_difficulty_adds_the_same(difficulty: int, minutes: str) -> None:
    """Difficulty as an athletic trainers' board scales it (2 essential to 4 mastery): 13.95 a step."""
    assert study_minutes(3774, 16, Decimal(difficulty)) == Decimal(minutes)


@pytest.mark.parametrize(
    ("words", "questions", "difficulty", "minutes"),
    [(24000, 20, 3, "116.964"), (12000, 10, 2, "55.422"), (12000, 10, 3, "69.372"), (6000, 5, 2, "31.626")],
)
def test_worked_examples(words: int, questions: int, difficulty: int, minutes: str) -> None:
    """Examples of our own, worked by hand from the formula."""
    assert study_minutes(words, questions, Decimal(difficulty)) == Decimal(minutes)


def test_a_tiny_text_earns_nothing_rather_than_less() -> None:
    """500 words, 2 questions, difficulty 1 come out at -0.1755 minutes, which is no time."""
    assert study_minutes(500, 2, Decimal(1)) == 0
