"""Classical item statistics: pure functions, exact up to the last square root."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import atanh, lcm, sqrt, tanh
from statistics import NormalDist

Rows = Sequence[Sequence[int]]
Limits = tuple[float, float]
Z95 = NormalDist().inv_cdf(0.975)


def wilson(right: int, n: int) -> Limits:
    """The 95 % limits of a share of `n`, by Wilson's score interval (1927, cited from memory)."""
    share, spread = right / n, Z95**2 / n
    middle = (share + spread / 2) / (1 + spread)
    half = Z95 / (1 + spread) * sqrt(share * (1 - share) / n + spread / (4 * n))
    return max(0.0, middle - half), min(1.0, middle + half)


def whole_marks(rows: Sequence[Sequence[Fraction]]) -> list[list[int]]:
    """Marks, one row a sitter and one mark a question, all enlarged by the factor that makes them whole."""
    scale = lcm(*(mark.denominator for row in rows for mark in row))
    return [[mark.numerator * (scale // mark.denominator) for mark in row] for row in rows]


def item_rest(rows: Rows, item: int) -> float | None:
    """Pearson's correlation of an item with the rest of the test; None where either does not vary."""
    own = [row[item] for row in rows]
    rest = [sum(row) - row[item] for row in rows]
    spread = _spread(own, own) * _spread(rest, rest)
    return _spread(own, rest) / sqrt(spread) if spread else None


def fisher(correlation: float, n: int) -> Limits | None:
    """The 95 % limits of a correlation by Fisher's transformation; None at plus or minus 1 and under 4."""
    if abs(correlation) >= 1 or n < 4:  # noqa: PLR2004 - the spread is 1 / (n - 3)
        return None
    half = Z95 / sqrt(n - 3)
    return tanh(atanh(correlation) - half), tanh(atanh(correlation) + half)


def reliability(rows: Rows) -> Fraction | None:
    """KR-20 (Kuder & Richardson 1937), or alpha where marks come in parts (Cronbach 1951).

    Variances are those of the population; None with fewer than two questions, or where totals do not vary.
    """
    count = len(rows[0]) if rows else 0
    totals = [sum(row) for row in rows]
    whole = _spread(totals, totals)
    if count < 2 or not whole:  # noqa: PLR2004 - a single question has no inner consistency
        return None
    items = sum(_spread(column, column) for column in map(list, zip(*rows, strict=True)))
    return Fraction(count, count - 1) * (1 - Fraction(items, whole))


def reliability_error(coefficient: Fraction, n: int, count: int) -> float:
    """The large-sample standard error of KR-20 or alpha, for `n` sitters and `count` questions."""
    return float(1 - coefficient) * sqrt(2 * count / ((count - 1) * (n - 2)))


def _spread(one: Sequence[int], other: Sequence[int]) -> int:
    products = sum(a * b for a, b in zip(one, other, strict=True))
    return len(one) * products - sum(one) * sum(other)
