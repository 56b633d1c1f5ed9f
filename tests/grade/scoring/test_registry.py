"""Every policy against the shared examples, and the laws that all of them keep."""

from fractions import Fraction
from itertools import groupby
from random import Random
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.fault import Fault
from builder.grade.scoring.choices import CHOICE_POLICIES, ChoiceKey
from builder.grade.scoring.keyed import Keyed
from builder.grade.scoring.matching import MATCH_POLICIES, MatchKey
from builder.grade.scoring.number import NUMBER_POLICIES, NumberKey
from builder.grade.scoring.ordering import ORDER_POLICIES, OrderKey
from builder.grade.scoring.panel import PANEL_POLICIES, PanelKey
from builder.grade.scoring.registry import score
from builder.grade.scoring.value import Value
from builder.model.policy import POLICY_NAMES, USUAL
from builder.model.question import QUESTION_KINDS
from tests.grade.scoring.golden import EXAMPLES, earned

NAMES = tuple("abcdef")
LEFT = ("l1", "l2", "l3")
Scored = tuple[Keyed, str, Value]
names = st.sampled_from((*NAMES, *LEFT, "", "20", "made up"))
values: st.SearchStrategy[Value] = st.one_of(
    names, st.lists(st.one_of(names, st.tuples(names, names)), max_size=7).map(tuple)
)
numbers = st.fractions(min_value=-99, max_value=99, max_denominator=20)


def keys(right: set[str], steps: list[str], votes: list[int], bounds: list[Fraction]) -> list[Scored]:
    """A key of every kind with each of its policies, and the answer that is right."""
    low, high = sorted(bounds)
    choices = ChoiceKey(NAMES, frozenset(right))
    pairs = tuple(zip(LEFT, steps, strict=False))
    best = NAMES[votes.index(max(votes))]
    exactly = str(low.numerator) if low.denominator == 1 else "0"
    bound = NumberKey(min(low, Fraction(exactly)), max(high, Fraction(exactly)), "cm")
    return [
        *((choices, policy, tuple(sorted(right))) for policy in CHOICE_POLICIES),
        *((OrderKey(tuple(steps)), policy, tuple(steps)) for policy in ORDER_POLICIES),
        *((MatchKey(frozenset(pairs)), policy, pairs) for policy in MATCH_POLICIES),
        (bound, "within", exactly),
        (PanelKey(tuple(zip(NAMES, votes, strict=True))), "aggregate", best),
    ]


scored = st.builds(
    keys,
    st.sets(st.sampled_from(NAMES)),
    st.permutations(NAMES),
    st.lists(st.integers(0, 9), min_size=6, max_size=6).filter(any),
    st.lists(numbers, min_size=2, max_size=2),
)


@pytest.mark.parametrize(
    ("kind", "policy"),
    [(kind, policy) for kind in QUESTION_KINDS if kind != "text" for policy in POLICY_NAMES[kind]],
)
def test_every_policy_gives_what_its_examples_say(kind: str, policy: str) -> None:
    """Each has examples, among them one of full marks and one unanswered, and each is met exactly."""
    mine = [one for one in EXAMPLES if (one["question"]["kind"], one["policy"]) == (kind, policy)]
    assert {"1", "0"} <= {one["fraction"] for one in mine}
    assert any(one["value"] is None for one in mine)
    assert {_told(one): earned(one) for one in mine} == {
        _told(one): Fraction(one["fraction"]) for one in mine
    }


def test_the_examples_name_nothing_unknown() -> None:
    """Every example is of a kind and a policy that are there, says its source, and stands once."""
    assert all(one["policy"] in POLICY_NAMES[one["question"]["kind"]] and one["source"] for one in EXAMPLES)
    told = sorted(f"{one['question']} {one['policy']} {one['value']}" for one in EXAMPLES)
    assert [name for name, group in groupby(told) if len(list(group)) > 1] == []


def test_fractions_of_the_examples_are_in_lowest_terms() -> None:
    """A script may compare them as text."""
    assert [one for one in EXAMPLES if str(Fraction(one["fraction"])) != one["fraction"]] == []


@given(scored)
def test_the_key_earns_everything_and_nothing_answered_nothing(all_keys: list[Scored]) -> None:
    """Under every policy, whatever is right."""
    for key, policy, right in all_keys:
        assert score(key, policy, right) == 1, policy
        assert score(key, policy, None) == 0, policy


@given(scored, values)
def test_a_mark_lies_between_nothing_and_all(all_keys: list[Scored], value: Value) -> None:
    """Whatever an answer sheet holds, of whatever shape."""
    for key, policy, _ in all_keys:
        assert 0 <= score(key, policy, value) <= 1, policy


@given(scored, st.lists(names, max_size=7), st.randoms(use_true_random=False))
def test_the_order_of_choices_and_of_options_is_nothing(
    all_keys: list[Scored], value: list[str], chance: Random
) -> None:
    """Choices, options and right ones may be listed in any order."""
    turned, options = chance.sample(value, len(value)), tuple(chance.sample(NAMES, len(NAMES)))
    for key, policy, _ in all_keys:
        if isinstance(key, ChoiceKey):
            other = ChoiceKey(options, key.right)
            assert score(key, policy, tuple(value)) == score(other, policy, tuple(turned)), policy


@given(scored, st.lists(st.tuples(names, names), max_size=7), st.randoms(use_true_random=False))
def test_the_order_of_pairs_is_nothing(
    all_keys: list[Scored], value: list[tuple[str, str]], chance: Random
) -> None:
    """Pairs may be put together in any order."""
    turned = chance.sample(value, len(value))
    for key, policy, _ in all_keys:
        if isinstance(key, MatchKey):
            assert score(key, policy, tuple(value)) == score(key, policy, tuple(turned)), policy


@pytest.mark.parametrize("policy", CHOICE_POLICIES)
def test_choosing_everything_never_earns_all(policy: str) -> None:
    """No policy is beaten by choosing every option."""
    assert score(ChoiceKey(NAMES, frozenset("ab")), policy, NAMES) < 1


def test_only_what_counts_each_option_pays_for_choosing_none() -> None:
    """An answer without a choice is not the same as no answer under three policies, and no others."""
    few = ChoiceKey(NAMES, frozenset("a"))
    paying = {policy for policy in CHOICE_POLICIES if score(few, policy, ())}
    assert paying == {"per_option", "half_point", "over_half"}


def test_every_policy_that_an_author_may_name_is_there() -> None:
    """The names of the course file are those of the policies, and what is usual is one of them."""
    assert {
        "one": ("exact",),
        "many": tuple(CHOICE_POLICIES),
        "order": tuple(ORDER_POLICIES),
        "match": tuple(MATCH_POLICIES),
        "number": tuple(NUMBER_POLICIES),
        "panel": tuple(PANEL_POLICIES),
        "text": ("rubric",),
    } == POLICY_NAMES
    assert [kind for kind in QUESTION_KINDS if USUAL[kind] not in POLICY_NAMES[kind]] == []


def test_an_unknown_policy_is_a_fault() -> None:
    """It is named, with those that are there."""
    with pytest.raises(Fault, match=r"no scoring policy `guess`.*Use one of exact, plus_minus"):
        score(ChoiceKey(NAMES, frozenset("a")), "guess", "a")


def _told(example: dict[str, Any]) -> str:
    return f"{example['name']} | {example['question']} | {example['value']}"
