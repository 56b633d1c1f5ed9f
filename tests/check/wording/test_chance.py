"""How likely a spread of right answers is by chance, held against a library of statistics."""

from collections import Counter
from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from builder.check.wording.chance import chance_of, chi_square_tail, exact_chance


@pytest.mark.parametrize(
    ("counts", "chance"),
    [
        ([8, 6, 4, 2], 0.2614641299),
        ([3, 12, 4, 1], 0.0029051528),
        ([5, 5, 5, 5], 1.0),
        ([10, 10, 16, 14], 0.5398700347),
        ([0, 1, 6, 1], 0.0271606445),
    ],
)
def test_known_spreads(counts: list[int], chance: float) -> None:
    """Chi-square from five a position, the exact test below; figures worked out with scipy."""
    assert chance_of(counts, Fraction(5)) == pytest.approx(chance, abs=1e-9)


@given(st.lists(st.integers(0, 40), min_size=2, max_size=8).filter(any))
def test_the_tail_is_that_of_the_library(counts: list[int]) -> None:
    """Whatever the spread, chi-square and its tail agree with scipy."""
    expected = stats.chisquare(counts)
    assert chance_of(counts, Fraction(0)) == pytest.approx(expected.pvalue, abs=1e-9)


def test_the_tail_falls_from_one() -> None:
    """Nothing uneven is certain to come; much unevenness hardly ever does."""
    assert chi_square_tail(0, 3) == 1
    assert chi_square_tail(100, 3) < 1e-9


@given(st.lists(st.integers(0, 3), min_size=2, max_size=3).filter(any))
def test_the_exact_chance_is_that_of_counting_every_outcome(counts: list[int]) -> None:
    """Every way to place the right answers is counted out one by one."""
    total, places = sum(counts), len(counts)
    ways = Counter(
        tuple(outcome.count(place) for place in range(places))
        for outcome in product(range(places), repeat=total)
    )
    uneven = sum(count for count in ways.values() if count <= ways[tuple(counts)])
    assert exact_chance(counts) == Fraction(uneven, places**total)
