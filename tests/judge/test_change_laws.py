"""What would change an answer, against trying everything: nothing nearer is missed, nothing told is false."""

from collections.abc import Callable
from dataclasses import replace
from functools import cache
from itertools import combinations, product

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from builder.judge.change import MOST, would_change
from builder.judge.space import Value
from builder.judge.trial import Trial
from builder.model.card import Card, site_of
from builder.model.judgement import OptionJudgement
from builder.model.rule import Rule
from tests.judge import small
from tests.judge.laws import LENGTH, SMALL, Client, World, shipped_world

Found = set[tuple[frozenset[str], str]]


@cache
def barred_thrice() -> World:
    """The small rules, and three more that each bar the card until one thing of its own is changed."""
    bars = {"written.site": "on", "written.barrier": "no", "swelling": "rising"}
    rules = [
        small.rule(f"bar_{number}", {name: value}, options=[{"cards": ["cold"], "answer": "barred"}])
        for number, (name, value) in enumerate(bars.items())
    ]
    added = {one["id"]: Rule.model_validate(one) for one in rules}
    return World(replace(SMALL.content, rules={**SMALL.content.rules, **added}))


def trial(world: World, client: Client) -> Trial:
    """One client ready to try changes on."""
    judge = world.judge
    return Trial(
        judge.options,
        client.values,
        lambda state, opened: judge.frame_of(state, client.declared, None, opened=opened),
        judge.derived_from,
    )


def answer(
    world: World, client: Client, card: Card, written: dict[str, Value], changed: dict[str, Value]
) -> str:
    """The answer at worst after these changes, worked out from the beginning."""
    facts = {name: value for name, value in changed.items() if not name.startswith("written.")}
    site = site_of(changed.get("written.site", client.site))
    dose = {name: changed.get(f"written.{name}", value) for name, value in written.items()}
    return world.judge.options.answers(world.frame(client.but(**facts)), card, site, dose)[1]


def smallest(world: World, client: Client, judged: OptionJudgement, most: int) -> tuple[int, Found]:
    """The least number of things in the room that give another answer, and all that do; 0 if none found."""
    card, written = world.content.cards[judged.card], dict(judged.written)
    now = {
        **client.values,
        **{f"written.{name}": one for name, one in written.items()},
        "written.site": judged.site,
    }
    variables = world.judge.space.variables
    room = [name for name, one in variables.items() if one.fact.room and name in now]
    others = {
        name: [
            cell.value
            for cell in variables[name].cells
            if not variables[name].mask_of(now[name]) & variables[name].mask_of(cell.value)
        ]
        for name in room
    }
    for size in range(1, most + 1):
        found: Found = set()
        for names in combinations(room, size):
            for values in product(*(others[name] for name in names)):
                after = answer(world, client, card, written, dict(zip(names, values, strict=True)))
                if after != judged.at_worst:
                    found.add((frozenset(names), after))
        if found:
            return size, found
    return 0, set()


@pytest.mark.parametrize(
    ("world", "most", "examples"),
    [(lambda: SMALL, 3, 25), (barred_thrice, 3, 25), (shipped_world, 1, 25)],
    ids=["small", "barred thrice", "shipped"],
)
def test_nothing_nearer_is_missed(world: Callable[[], World], most: int, examples: int) -> None:
    """As many things are told as trying everything needs, each with an answer it gives; ties are counted."""
    made = world()
    cards = list(made.content.cards.values())

    @settings(max_examples=examples, deadline=None, suppress_health_check=list(HealthCheck))
    @given(st.binary(min_size=LENGTH, max_size=LENGTH), st.integers(0, len(cards) - 1))
    def run(drawn: bytes, number: int) -> None:
        client = made.client(drawn)
        (judged,) = made.judged(client, [cards[number]])
        told, more = would_change(trial(made, client), judged)
        size, possible = smallest(made, client, judged, most)
        named = {(frozenset(one.set), one.answer) for one in told}
        assert len(named) == len(told)
        if size:
            assert named <= possible
            assert (len(told), more) == (min(MOST, len(possible)), len(possible) > MOST)
        else:
            assert all(len(one.set) > most for one in told)

    run()


def test_three_changes_are_found_where_fewer_are_not_enough() -> None:
    """On the skin of the injury, while swelling rises: each bars by itself, so all three have to change."""
    made = barred_thrice()
    known = {**SMALL.client(bytes(LENGTH)).values, "swelling": "rising", "consent": "yes"}
    client = Client(
        known,
        "mild",
        "on",
        {"minutes": made.content.cards["cold"].usual["minutes"], "barrier": "no"},
        frozenset(),
    )
    (judged,) = made.judged(client, [made.content.cards["cold"]])
    told, _ = would_change(trial(made, client), judged)
    size, possible = smallest(made, client, judged, 3)
    assert size == 3
    assert {(frozenset(one.set), one.answer) for one in told} <= possible
    assert told
    assert all(one.set.keys() >= {"written.site", "written.barrier", "swelling"} for one in told)
