"""Policies for an order of steps. Each reads the places that the steps given have in the right order."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations, pairwise
from types import MappingProxyType

from builder.grade.scoring.named import named
from builder.grade.scoring.value import Value, listed


@dataclass(frozen=True)
class OrderKey:
    """Two steps or more in their right order, and pairs of which the first must come first whatever else."""

    steps: tuple[str, ...]
    must: tuple[tuple[str, str], ...] = ()


def exact(places: Sequence[int]) -> Fraction:
    """All or nothing: every step in its place. Common practice, no source."""
    return Fraction(_in_place(places) == len(places))


def in_place(places: Sequence[int]) -> Fraction:
    """The share of steps in their place. Common practice, no source; one step moved may lose everything."""
    return Fraction(_in_place(places), len(places))


def pairs(places: Sequence[int]) -> Fraction:
    """The share of all pairs that stand the right way round: Kendall's tau, moved to 0..1.

    Kendall 1938, Biometrika 30:81-93 (from memory).
    """
    every = list(combinations(places, 2))
    return Fraction(sum(one < other for one, other in every), len(every))


def adjacent(places: Sequence[int]) -> Fraction:
    """The share of neighbours that follow each other as they should. Common practice, no source."""
    return Fraction(sum(other == one + 1 for one, other in pairwise(places)), len(places) - 1)


def longest(places: Sequence[int]) -> Fraction:
    """The most steps that stand in order, gaps allowed, of all; the reverse order still earns one step.

    Amma 2022, IntechOpen, doi 10.5772/intechopen.102868.
    """
    return Fraction(_longest(places), len(places))


def longest_beyond_one(places: Sequence[int]) -> Fraction:
    """The same without the first step, which is always in order: the reverse order earns nothing.

    After Amma 2022, IntechOpen, doi 10.5772/intechopen.102868; the shift is ours.
    """
    return Fraction(_longest(places) - 1, len(places) - 1)


def footrule(places: Sequence[int]) -> Fraction:
    """One less the sum of distances from the right places, as a share of the greatest there can be.

    Spearman 1906; the greatest sum, half the square of the number: Diaconis & Graham 1977 (both from memory).
    """
    off = sum(abs(place - right) for right, place in enumerate(places))
    return 1 - Fraction(off, len(places) ** 2 // 2)


OrderPolicy = Callable[[Sequence[int]], Fraction]
ORDER_POLICIES: Mapping[str, OrderPolicy] = MappingProxyType(
    {
        "exact": exact,
        "in_place": in_place,
        "pairs": pairs,
        "adjacent": adjacent,
        "longest": longest,
        "longest_beyond_one": longest_beyond_one,
        "footrule": footrule,
    }
)


def score_order(key: OrderKey, policy: str, value: Value) -> Fraction:
    """What an order earns: nothing unless every step stands once and each that must come first does."""
    rule, given = named(ORDER_POLICIES, policy), listed(value)
    if sorted(given) != sorted(key.steps):
        return Fraction(0)
    if any(given.index(first) > given.index(then) for first, then in key.must):
        return Fraction(0)
    return rule([key.steps.index(step) for step in given])


def _in_place(places: Sequence[int]) -> int:
    return sum(place == right for right, place in enumerate(places))


def _longest(places: Sequence[int]) -> int:
    best: list[int] = []
    for at, place in enumerate(places):
        best.append(1 + max((best[k] for k in range(at) if places[k] < place), default=0))
    return max(best)
