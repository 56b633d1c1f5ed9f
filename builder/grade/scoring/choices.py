"""Policies for chosen options: single best answer and multiple response.

Not among them is the share of right options chosen, whatever else is: choosing everything would earn it all.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from builder.grade.scoring.named import named
from builder.grade.scoring.value import Value, chosen

HALF = Fraction(1, 2)


@dataclass(frozen=True)
class ChoiceKey:
    """All options, and those of them that are right."""

    options: tuple[str, ...]
    right: frozenset[str]


def exact(key: ChoiceKey, picked: frozenset[str]) -> Fraction:
    """All or nothing: the right options and no other. Common practice, no source."""
    return Fraction(picked == key.right)


def plus_minus(key: ChoiceKey, picked: frozenset[str]) -> Fraction:
    """Right choices less wrong ones, of all that are right, not below 0.

    Betts, Muntean, Kim & Kao 2022, Educational and Psychological Measurement 82:151-176.
    """
    hits, misses = len(picked & key.right), len(picked - key.right)
    return Fraction(max(0, hits - misses), len(key.right))


def per_option(key: ChoiceKey, picked: frozenset[str]) -> Fraction:
    """The share of options rightly chosen or rightly left; a sheet with none chosen earns for those left.

    The true/false rule of Betts, Muntean, Kim & Kao 2022; PS1/n in Kanzow et al. 2023, JMIR Medical
    Education 9:e43792.
    """
    return Fraction(_settled(key, picked), len(key.options))


def half_point(key: ChoiceKey, picked: frozenset[str]) -> Fraction:
    """Half where all options but one are settled rightly. Krebs 1997 (from memory); in Kanzow et al. 2023."""
    near = _settled(key, picked) == len(key.options) - 1
    return exact(key, picked) or HALF * near


def over_half(key: ChoiceKey, picked: frozenset[str]) -> Fraction:
    """Half where more than half of the options are settled rightly; exactly half is not enough.

    PS50 in Kanzow et al. 2023, JMIR Medical Education 9:e43792; others ask for at least half.
    """
    most = 2 * _settled(key, picked) > len(key.options)
    return exact(key, picked) or HALF * most


def limited(key: ChoiceKey, picked: frozenset[str]) -> Fraction:
    """The share of right options chosen, and nothing where more are chosen than are right.

    Ripkey, Case & Swanson 1996 (from memory), for questions that say how many to choose.
    """
    return Fraction(len(picked & key.right), len(key.right)) * (len(picked) <= len(key.right))


def shares(key: ChoiceKey, picked: frozenset[str]) -> Fraction:
    """The share of right options chosen less the share of wrong ones, here not below 0.

    Morgan 1979 (from memory), whose own rule goes down to -1.
    """
    wrong = max(1, len(key.options) - len(key.right))
    gained = Fraction(len(picked & key.right), len(key.right))
    return max(Fraction(0), gained - Fraction(len(picked - key.right), wrong))


ChoicePolicy = Callable[[ChoiceKey, frozenset[str]], Fraction]
CHOICE_POLICIES: Mapping[str, ChoicePolicy] = MappingProxyType(
    {
        "exact": exact,
        "plus_minus": plus_minus,
        "per_option": per_option,
        "half_point": half_point,
        "over_half": over_half,
        "limited": limited,
        "shares": shares,
    }
)


def score_choice(key: ChoiceKey, policy: str, value: Value) -> Fraction:
    """What the options chosen earn; where nothing is right, only choosing nothing does."""
    rule = named(CHOICE_POLICIES, policy)
    return (rule if key.right else exact)(key, chosen(value))


def _settled(key: ChoiceKey, picked: frozenset[str]) -> int:
    return max(0, len(key.options) - len(picked ^ key.right))
