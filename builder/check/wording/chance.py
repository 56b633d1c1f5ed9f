"""How likely a spread of right answers over positions is by chance."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from fractions import Fraction


def chance_of(counts: Sequence[int], expected: Fraction) -> float:
    """The chance of a spread at least as uneven, all positions being alike.

    Chi-square where `expected` or more fall on each position on average, else the exact multinomial test.
    """
    mean = Fraction(sum(counts), len(counts))
    if mean >= expected:
        return chi_square_tail(sum((count - mean) ** 2 / mean for count in counts), len(counts) - 1)
    return float(exact_chance(counts))


def exact_chance(counts: Sequence[int]) -> Fraction:
    """The exact multinomial test: the summed chance of every spread that is no more likely than this one."""
    ways = _ways(counts)
    total, places = sum(counts), len(counts)
    spreads = (_ways(one) for one in _spreads(total, places))
    return Fraction(sum(one for one in spreads if one <= ways), places**total)


def chi_square_tail(statistic: float | Fraction, degrees: int) -> float:
    """The chance that chi-square with these whole degrees of freedom is as large or larger."""
    half = float(statistic) / 2
    if degrees % 2 == 0:
        return math.exp(-half) * sum(
            math.pow(half, power) / math.factorial(power) for power in range(degrees // 2)
        )
    odd = sum(math.pow(half, power + 0.5) / math.gamma(power + 1.5) for power in range(degrees // 2))
    return math.erfc(math.sqrt(half)) + math.exp(-half) * odd


def _ways(counts: Sequence[int]) -> int:
    return math.factorial(sum(counts)) // math.prod(math.factorial(count) for count in counts)


def _spreads(total: int, places: int) -> Iterator[tuple[int, ...]]:
    if places == 1:
        yield (total,)
        return
    for first in range(total + 1):
        for rest in _spreads(total - first, places - 1):
            yield (first, *rest)
