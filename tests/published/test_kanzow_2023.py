"""Rules of partial credit listed by Kanzow et al. 2023, JMIR Medical Education 9:e43792.

All or nothing, half for all but one (Krebs 1997, from memory) and half for more than half (PS50). The values
follow from the rules by enumeration, for six options of which A, C and D are right; the paper's own means
rest on real answers, which are not here.
"""

from fractions import Fraction
from itertools import combinations

import pytest

from builder.grade.scoring.choices import ChoiceKey, score_choice

KEY = ChoiceKey(tuple("ABCDEF"), frozenset("ACD"))
SUBSETS = [chosen for size in range(7) for chosen in combinations("ABCDEF", size)]


@pytest.mark.parametrize(
    ("chosen", "exact", "half_point", "over_half"),
    [
        ("ACD", "1", "1", "1"),
        ("AC", "0", "1/2", "1/2"),
        ("ACE", "0", "0", "1/2"),
        ("ACDE", "0", "1/2", "1/2"),
        ("ABCDEF", "0", "0", "0"),
        ("", "0", "0", "0"),
        ("BEF", "0", "0", "0"),
        ("A", "0", "0", "1/2"),
    ],
)
def test_credit_grows_with_what_is_settled(chosen: str, exact: str, half_point: str, over_half: str) -> None:
    """Each rule is as generous as the one before or more."""
    marks = [score_choice(KEY, policy, tuple(chosen)) for policy in ("exact", "half_point", "over_half")]
    assert marks == [Fraction(exact), Fraction(half_point), Fraction(over_half)]


@pytest.mark.parametrize(
    ("policy", "over_all", "over_threes"),
    [
        ("exact", ".015625", ".05"),
        ("half_point", ".0625", ".05"),
        ("over_half", ".1796875", ".275"),
    ],
)
def test_the_mean_of_guessing(policy: str, over_all: str, over_threes: str) -> None:
    """Over all 64 answers, and over the 20 of three choices."""
    marks = [score_choice(KEY, policy, chosen) for chosen in SUBSETS]
    threes = [mark for mark, chosen in zip(marks, SUBSETS, strict=True) if len(chosen) == 3]
    assert (sum(marks) / 64, sum(threes) / 20) == (Fraction(over_all), Fraction(over_threes))
