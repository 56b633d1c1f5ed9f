"""The longest run in order, gaps allowed: Amma 2022, IntechOpen, doi 10.5772/intechopen.102868.

The maximal relative sequence. The values follow by enumeration, for the key ABCDE.
"""

from fractions import Fraction
from itertools import permutations

import pytest

from builder.grade.scoring.ordering import OrderKey, score_order

KEY = OrderKey(tuple("ABCDE"))


@pytest.mark.parametrize(
    ("order", "steps"),
    [("ABCDE", 5), ("BACDE", 4), ("ABDCE", 4), ("BCDEA", 4), ("EABCD", 4), ("CDEAB", 3), ("EDCBA", 1)],
)
def test_the_longest_run_counts(order: str, steps: int) -> None:
    """One step moved anywhere costs one step."""
    assert score_order(KEY, "longest", tuple(order)) == Fraction(steps, 5)
    assert score_order(KEY, "longest_beyond_one", tuple(order)) == Fraction(steps - 1, 4)


@pytest.mark.parametrize(
    ("policy", "over_all"), [("longest", Fraction(67, 120)), ("longest_beyond_one", Fraction(43, 96))]
)
def test_the_mean_of_guessing(policy: str, over_all: Fraction) -> None:
    """Over all 120 orders .558333 and .447917."""
    assert sum(score_order(KEY, policy, order) for order in permutations("ABCDE")) / 120 == over_all
