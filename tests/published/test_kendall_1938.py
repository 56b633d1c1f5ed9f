"""Pairs in the right order: Kendall 1938, Biometrika 30:81-93 (from memory).

Tau is twice the share of pairs in order, less one. The values of tau for the key ABCDE were reproduced with a
statistics library.
"""

from fractions import Fraction
from itertools import permutations

import pytest

from builder.grade.scoring.ordering import OrderKey, score_order

KEY = OrderKey(tuple("ABCDE"))


@pytest.mark.parametrize(
    ("order", "tau"),
    [
        ("ABCDE", "1"),
        ("BACDE", ".8"),
        ("ABDCE", ".8"),
        ("BCDEA", ".2"),
        ("EABCD", ".2"),
        ("CDEAB", "-.2"),
        ("EDCBA", "-1"),
    ],
)
def test_the_share_of_pairs_is_tau_moved(order: str, tau: str) -> None:
    """One step moved to the other end keeps most of the mark."""
    assert 2 * score_order(KEY, "pairs", tuple(order)) - 1 == Fraction(tau)


def test_tau_means_nothing_by_chance() -> None:
    """Half of the pairs over all 120 orders."""
    assert sum(score_order(KEY, "pairs", order) for order in permutations("ABCDE")) / 120 == Fraction(1, 2)
