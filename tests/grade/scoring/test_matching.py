"""Pairs put together earn each their share."""

from fractions import Fraction

import pytest

from builder.grade.scoring.matching import MatchKey, score_match

KEY = MatchKey(frozenset({("l1", "r1"), ("l2", "r2"), ("l3", "r3")}))


@pytest.mark.parametrize(
    ("pairs", "share"),
    [
        ((("l1", "r1"), ("l2", "r2"), ("l3", "r3")), Fraction(1)),
        ((("l1", "r1"), ("l2", "r3"), ("l3", "r2")), Fraction(1, 3)),
        ((("l1", "r1"), ("l2", "r1"), ("l3", "r1")), Fraction(1, 3)),
        ((("l1", "r1"), ("l1", "r2"), ("l1", "r3")), Fraction(0)),
        (("l1", "r1"), Fraction(0)),
        ("l1", Fraction(0)),
    ],
)
def test_each_pair_earns_its_share(pairs: tuple[tuple[str, str], ...], share: Fraction) -> None:
    """Naming every partner for one left side is no way to find the right one."""
    assert score_match(KEY, "per_pair", pairs) == share
    assert score_match(KEY, "exact", pairs) == (share == 1)
