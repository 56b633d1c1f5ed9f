"""Plus-minus scoring: Betts, Muntean, Kim & Kao 2022, Educational and Psychological Measurement 82:151-176.

max(0, TP - FP) / m; the values follow by enumeration, for six options of which A, C and D are right.
"""

from fractions import Fraction
from itertools import combinations

import pytest

from builder.grade.mark import plus_minus

RIGHT = "ACD"


@pytest.mark.parametrize(
    ("chosen", "earned"),
    [
        ("ACD", Fraction(1)),
        ("AC", Fraction(2, 3)),
        ("ACE", Fraction(1, 3)),
        ("ACDE", Fraction(2, 3)),
        ("ABCDEF", Fraction(0)),
        ("", Fraction(0)),
        ("BEF", Fraction(0)),
        ("A", Fraction(1, 3)),
    ],
)
def test_right_less_wrong(chosen: str, earned: Fraction) -> None:
    """Choosing everything earns nothing, and nothing goes below that."""
    assert plus_minus(RIGHT, chosen) == earned


def test_guessing_pays_little() -> None:
    """The mean over all 64 answers is .15625, over the 20 of three choices .2."""
    subsets = [chosen for size in range(7) for chosen in combinations("ABCDEF", size)]
    marks = [plus_minus(RIGHT, chosen) for chosen in subsets]
    threes = [mark for mark, chosen in zip(marks, subsets, strict=True) if len(chosen) == 3]
    assert (sum(marks) / 64, sum(threes) / 20) == (Fraction(5, 32), Fraction(1, 5))
