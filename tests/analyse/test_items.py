"""Item statistics agree with those of general libraries, and say when they are not defined."""

from collections.abc import Sequence
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from builder.analyse.items import fisher, item_rest, reliability, reliability_error, whole_marks, wilson

Rows = Sequence[Sequence[int]]
Marks = list[list[Fraction]]

marks = st.sampled_from([Fraction(0), Fraction(1), Fraction(1, 2), Fraction(1, 3), Fraction(2, 3)])
tables = st.integers(2, 5).flatmap(
    lambda width: st.lists(st.lists(marks, min_size=width, max_size=width), min_size=4, max_size=30)
)


def test_marks_are_made_whole_by_one_factor() -> None:
    """Halves and thirds together become sixths."""
    assert whole_marks([[Fraction(1, 2), Fraction(1)], [Fraction(0), Fraction(2, 3)]]) == [[3, 6], [0, 4]]


@given(st.integers(1, 200).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))))
def test_wilson_agrees_with_scipy(pair: tuple[int, int]) -> None:
    """The limits of a share are those of scipy's binomial test."""
    right, n = pair
    oracle = stats.binomtest(right, n).proportion_ci(method="wilson")
    assert wilson(right, n) == pytest.approx((oracle.low, oracle.high), abs=1e-9)


@given(tables)
def test_item_rest_agrees_with_numpy(rows: Marks) -> None:
    """The correlation with the rest is numpy's, and is missing exactly where a side does not vary."""
    table = np.array(rows, dtype=float)
    own, rest = table[:, 0], table.sum(axis=1) - table[:, 0]
    found = item_rest(whole_marks(rows), 0)
    if len({row[0] for row in rows}) == 1 or len({sum(row) - row[0] for row in rows}) == 1:
        assert found is None
    else:
        assert found == pytest.approx(np.corrcoef(own, rest)[0, 1], abs=1e-9)


@given(tables)
def test_reliability_agrees_with_numpy(rows: Marks) -> None:
    """The coefficient is the one that numpy's population variances give."""
    table = np.array(rows, dtype=float)
    count = table.shape[1]
    found = reliability(whole_marks(rows))
    if len({sum(row) for row in rows}) == 1:
        assert found is None
    else:
        expected = count / (count - 1) * (1 - table.var(axis=0).sum() / table.sum(axis=1).var())
        assert float(found or 0) == pytest.approx(expected, abs=1e-9)


@pytest.mark.parametrize("rows", [[], [[1], [0]], [[1, 0], [0, 1]], [[1, 1], [1, 1]]])
def test_reliability_is_not_always_defined(rows: Rows) -> None:
    """No sitters, one question, or totals that do not vary give none."""
    assert reliability(rows) is None


@pytest.mark.parametrize(
    ("correlation", "n", "low", "high"),
    [(0.3, 30, -0.0675725, 0.5958674), (0.3, 100, 0.1100677, 0.4687943), (0.3, 200, 0.1682625, 0.4212093)],
)
def test_fisher_limits(correlation: float, n: int, low: float, high: float) -> None:
    """Limits computed beforehand with scipy."""
    assert fisher(correlation, n) == pytest.approx((low, high), abs=1e-6)


def test_a_perfect_correlation_has_no_limits() -> None:
    """At 1, and with three sitters, the transformation has no value."""
    assert fisher(1.0, 30) is None
    assert fisher(0.5, 3) is None


def test_a_perfect_staircase_is_exact() -> None:
    """Eleven sitters of whom each knows one question more than the last: KR-20 is 10/11 (worked by hand)."""
    rows = [[1] * known + [0] * (10 - known) for known in range(11)]
    assert reliability(rows) == Fraction(10, 11)
    assert [item_rest(rows, item) for item in (0, 4, 9)] == pytest.approx(
        [0.427121, 0.817057, 0.427121], abs=1e-6
    )


def test_the_error_shrinks_with_sitters() -> None:
    """Four times the sitters about halve the standard error."""
    few, many = (reliability_error(Fraction(7, 10), n, 20) for n in (102, 402))
    assert many == pytest.approx(few / 2)
