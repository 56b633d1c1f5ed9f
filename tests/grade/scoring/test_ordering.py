"""An order earns by the places its steps have."""

from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.grade.scoring.ordering import ORDER_POLICIES, OrderKey, score_order

STEPS = tuple("ABCD")


@pytest.mark.parametrize("policy", ORDER_POLICIES)
@pytest.mark.parametrize("given_order", ["", "ABC", "ABCC", "ABCDD", "ABCE"])
def test_an_order_that_is_none_earns_nothing(policy: str, given_order: str) -> None:
    """Every step must stand exactly once."""
    assert score_order(OrderKey(STEPS), policy, tuple(given_order)) == 0


@pytest.mark.parametrize("policy", ORDER_POLICIES)
def test_what_must_come_first_decides_before_the_rest(policy: str) -> None:
    """No policy pays for an order that breaks it, each pays the rest as without it."""
    free, bound = OrderKey(STEPS), OrderKey(STEPS, (("A", "D"),))
    for order in permutations(STEPS):
        kept = order.index("A") < order.index("D")
        assert score_order(bound, policy, order) == score_order(free, policy, order) * kept


@given(st.permutations(range(6)))
def test_only_the_right_order_earns_everything(order: list[int]) -> None:
    """Under every policy full marks are for the key alone."""
    steps = tuple("ABCDEF")
    given_order = tuple(steps[place] for place in order)
    for policy in ORDER_POLICIES:
        assert (score_order(OrderKey(steps), policy, given_order) == 1) == (given_order == steps), policy


def test_a_single_step_is_never_out_of_place() -> None:
    """Steps in place are 0, 1, 2 or 4 of four, never 3."""
    scores = {score_order(OrderKey(STEPS), "in_place", order) * 4 for order in permutations(STEPS)}
    assert scores == {0, 1, 2, 4}
