"""The footrule, the sum of distances from the right places: Spearman 1906 (from memory).

As a share of its greatest, half the square of the number of steps: Diaconis & Graham 1977 (from memory). The
values follow by enumeration, for the key ABCDE.
"""

from fractions import Fraction
from itertools import permutations

import pytest

from builder.grade.scoring.ordering import OrderKey, score_order

KEY = OrderKey(tuple("ABCDE"))


@pytest.mark.parametrize(
    ("order", "off"),
    [("ABCDE", 0), ("BACDE", 2), ("ABDCE", 2), ("BCDEA", 8), ("EABCD", 8), ("CDEAB", 12), ("EDCBA", 12)],
)
def test_the_distances_cost(order: str, off: int) -> None:
    """One step moved to the other end costs most of the mark."""
    assert score_order(KEY, "footrule", tuple(order)) == 1 - Fraction(off, 12)


def test_the_mean_of_guessing() -> None:
    """A third over all 120 orders; none is further off than twelve."""
    marks = [score_order(KEY, "footrule", order) for order in permutations("ABCDE")]
    assert (sum(marks), min(marks)) == (Fraction(40), Fraction(0))
