"""Policies for pairs put together."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from builder.grade.scoring.named import named
from builder.grade.scoring.value import Value, paired

Pairs = frozenset[tuple[str, str]]


@dataclass(frozen=True)
class MatchKey:
    """The pairs that belong together, each left side once."""

    pairs: Pairs


def exact(key: MatchKey, given: Pairs) -> Fraction:
    """All or nothing: every pair and no other. Common practice, no source."""
    return Fraction(given == key.pairs)


def per_pair(key: MatchKey, given: Pairs) -> Fraction:
    """The share of pairs that are right; a left side with two partners earns nothing.

    Common practice, no source; what guessing earns is the problem of matches (Montmort 1713, from memory).
    """
    partners = Counter(left for left, _ in given)
    right = sum(partners[left] == 1 for left, _ in given & key.pairs)
    return Fraction(right, len(key.pairs))


MatchPolicy = Callable[[MatchKey, Pairs], Fraction]
MATCH_POLICIES: Mapping[str, MatchPolicy] = MappingProxyType({"per_pair": per_pair, "exact": exact})


def score_match(key: MatchKey, policy: str, value: Value) -> Fraction:
    """What the pairs put together earn."""
    return named(MATCH_POLICIES, policy)(key, paired(value))
