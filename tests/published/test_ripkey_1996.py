"""The share of right options within a limit: Ripkey, Case & Swanson 1996 (from memory).

The values follow from the rule by enumeration, for six options of which A, C and D are right.
"""

from fractions import Fraction
from itertools import combinations

import pytest

from builder.grade.scoring.choices import ChoiceKey, score_choice

KEY = ChoiceKey(tuple("ABCDEF"), frozenset("ACD"))
SUBSETS = [chosen for size in range(7) for chosen in combinations("ABCDEF", size)]


@pytest.mark.parametrize(
    ("chosen", "earned"),
    [
        ("ACD", "1"),
        ("AC", "2/3"),
        ("ACE", "2/3"),
        ("ACDE", "0"),
        ("ABCDEF", "0"),
        ("", "0"),
        ("BEF", "0"),
        ("A", "1/3"),
    ],
)
def test_too_many_choices_earn_nothing(chosen: str, earned: str) -> None:
    """A wrong choice costs only its place, one too many costs everything."""
    assert score_choice(KEY, "limited", tuple(chosen)) == Fraction(earned)


def test_the_mean_of_guessing() -> None:
    """A quarter over all 64 answers, a half over the 20 of three choices."""
    marks = [score_choice(KEY, "limited", chosen) for chosen in SUBSETS]
    threes = [mark for mark, chosen in zip(marks, SUBSETS, strict=True) if len(chosen) == 3]
    assert (sum(marks) / 64, sum(threes) / 20) == (Fraction(1, 4), Fraction(1, 2))
