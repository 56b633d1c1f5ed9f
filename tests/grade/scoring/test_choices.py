"""Chosen options earn by the policy that is named."""

from fractions import Fraction

import pytest

from builder.grade.scoring.choices import CHOICE_POLICIES, ChoiceKey, score_choice

FEW = ChoiceKey(tuple("ABCDE"), frozenset("AB"))


@pytest.mark.parametrize("policy", CHOICE_POLICIES)
def test_where_nothing_is_right_choosing_nothing_is(policy: str) -> None:
    """A question without a right option has no share to divide by, and still one right answer."""
    empty = ChoiceKey(tuple("ABC"), frozenset())
    assert score_choice(empty, policy, ()) == 1
    assert score_choice(empty, policy, ("A",)) == 0


@pytest.mark.parametrize("policy", CHOICE_POLICIES)
def test_where_all_is_right_all_earns_everything_and_one_less_does_not(policy: str) -> None:
    """A question without a wrong option is marked too, and what is no option of it is wrong."""
    full = ChoiceKey(tuple("ABC"), frozenset("ABC"))
    assert score_choice(full, policy, tuple("ABC")) == 1
    assert score_choice(full, policy, tuple("AB")) < 1
    assert score_choice(full, policy, tuple("ABCZ")) < 1


def test_exactly_half_is_not_over_half() -> None:
    """Three of six settled earn nothing, four earn half."""
    six = ChoiceKey(tuple("ABCDEF"), frozenset("ACD"))
    assert score_choice(six, "over_half", ()) == 0
    assert score_choice(six, "over_half", ("A",)) == Fraction(1, 2)


def test_a_wrong_choice_costs_its_share_of_the_wrong_ones() -> None:
    """With two right and three wrong it costs less than one of right less wrong."""
    assert score_choice(FEW, "shares", tuple("ABC")) == Fraction(2, 3)
    assert score_choice(FEW, "plus_minus", tuple("ABC")) == Fraction(1, 2)
