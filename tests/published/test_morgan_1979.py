"""The share of right options chosen less that of wrong ones: Morgan 1979 (from memory), here not below 0.

The values follow from the rule by enumeration, for six options of which A, C and D are right; where the rule
itself goes below 0, the policy gives 0.
"""

from fractions import Fraction
from itertools import combinations

import pytest

from builder.grade.scoring.choices import ChoiceKey, score_choice

KEY = ChoiceKey(tuple("ABCDEF"), frozenset("ACD"))
SUBSETS = [chosen for size in range(7) for chosen in combinations("ABCDEF", size)]


@pytest.mark.parametrize(
    ("chosen", "by_the_rule"),
    [
        ("ACD", "1"),
        ("AC", "2/3"),
        ("ACE", "1/3"),
        ("ACDE", "2/3"),
        ("ABCDEF", "0"),
        ("", "0"),
        ("BEF", "-1"),
        ("A", "1/3"),
    ],
)
def test_the_share_of_right_less_that_of_wrong(chosen: str, by_the_rule: str) -> None:
    """All or none chosen earn nothing."""
    assert score_choice(KEY, "shares", tuple(chosen)) == max(0, Fraction(by_the_rule))


def test_the_floor_pays_for_guessing() -> None:
    """The rule means 0 over all answers; the floor lifts that to 10 of 64, counted by hand."""
    assert sum(score_choice(KEY, "shares", chosen) for chosen in SUBSETS) / 64 == Fraction(10, 64)
