"""Right less wrong, and each option on its own: Betts, Muntean, Kim & Kao 2022.

Educational and Psychological Measurement 82:151-176: max(0, TP - FP) / m and (TP + TN) / n. The values follow
from the rules by enumeration, for six options of which A, C and D are right.
"""

from fractions import Fraction
from itertools import combinations

import pytest

from builder.grade.scoring.choices import ChoiceKey, score_choice

KEY = ChoiceKey(tuple("ABCDEF"), frozenset("ACD"))
SUBSETS = [chosen for size in range(7) for chosen in combinations("ABCDEF", size)]


@pytest.mark.parametrize(
    ("chosen", "less_wrong", "each"),
    [
        ("ACD", Fraction(1), Fraction(1)),
        ("AC", Fraction(2, 3), Fraction(5, 6)),
        ("ACE", Fraction(1, 3), Fraction(4, 6)),
        ("ACDE", Fraction(2, 3), Fraction(5, 6)),
        ("ABCDEF", Fraction(0), Fraction(3, 6)),
        ("", Fraction(0), Fraction(3, 6)),
        ("BEF", Fraction(0), Fraction(0)),
        ("A", Fraction(1, 3), Fraction(4, 6)),
    ],
)
def test_right_less_wrong_and_each_option(chosen: str, less_wrong: Fraction, each: Fraction) -> None:
    """Choosing everything earns nothing under the one, half under the other, as choosing nothing does."""
    picked = tuple(chosen)
    assert (score_choice(KEY, "plus_minus", picked), score_choice(KEY, "per_option", picked)) == (
        less_wrong,
        each,
    )


@pytest.mark.parametrize(
    ("policy", "over_all", "over_threes"),
    [("plus_minus", Fraction(5, 32), Fraction(1, 5)), ("per_option", Fraction(1, 2), Fraction(1, 2))],
)
def test_guessing_pays_little(policy: str, over_all: Fraction, over_threes: Fraction) -> None:
    """The mean over all 64 answers is .15625 and .5, over the 20 of three choices .2 and .5."""
    marks = [score_choice(KEY, policy, chosen) for chosen in SUBSETS]
    threes = [mark for mark, chosen in zip(marks, SUBSETS, strict=True) if len(chosen) == 3]
    assert (sum(marks) / 64, sum(threes) / 20) == (over_all, over_threes)
