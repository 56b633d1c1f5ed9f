"""What guessing earns where pairs are matched: the problem of matches, Montmort 1713 (from memory)."""

from fractions import Fraction
from itertools import permutations

import pytest

from builder.grade.scoring.matching import MatchKey, score_match


@pytest.mark.parametrize(("count", "none_right"), [(3, "2/6"), (4, "9/24"), (5, "44/120"), (6, "265/720")])
def test_guessing_finds_one_pair_on_average(count: int, none_right: str) -> None:
    """One pair whatever the number; none with .333333, .375, .366667, .368056; all but one never."""
    sides = [str(place) for place in range(count)]
    key = MatchKey(frozenset(zip(sides, sides, strict=True)))
    every = [
        score_match(key, "per_pair", tuple(zip(sides, guess, strict=True))) for guess in permutations(sides)
    ]
    assert sum(every) / len(every) == Fraction(1, count)
    assert Fraction(every.count(Fraction(0)), len(every)) == Fraction(none_right)
    assert Fraction(count - 1, count) not in every
