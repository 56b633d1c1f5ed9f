"""What would change an answer, against trying everything: nothing nearer is missed, nothing told is false."""

from collections.abc import Callable, Iterator

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from builder.judge.change import MOST, Trial, would_change
from builder.judge.space import Value
from builder.model.card import ANSWERS, Card, site_of
from tests.judge.laws import LENGTH, SMALL, Client, World, shipped_world


def trial(world: World, client: Client) -> Trial:
    """One client ready to try changes on."""
    judge = world.judge
    state = judge.space.state(client.values)
    return Trial(
        judge.options,
        client.values,
        state,
        lambda other: judge.frame_of(other, client.declared, None),
        judge.derived_from,
    )


def single_changes(world: World, client: Client, card: Card) -> Iterator[tuple[str, str]]:
    """Every change of one thing in the room that gives another answer at worst: its name and that answer."""
    written = world.written(card, client)
    before = answer(world, client, card, written, client.site)
    for name, variable in world.judge.space.variables.items():
        for cell in variable.cells if variable.fact.room else ():
            attribute = name.removeprefix("written.")
            if name == "written.site":
                after = answer(world, client, card, written, site_of(cell.value))
            elif attribute in written and name != attribute:
                after = answer(world, client, card, {**written, attribute: cell.value}, client.site)
            elif name in client.values:
                after = answer(world, client.but(**{name: cell.value}), card, written, client.site)
            else:
                continue
            if after != before:
                yield name, after


def answer(world: World, client: Client, card: Card, written: dict[str, Value], site: str) -> str:
    """The answer at worst, worked out from the beginning."""
    return world.judge.options.answers(world.frame(client), card, site_of(site), written)[1]


@pytest.mark.parametrize("world", [lambda: SMALL, shipped_world], ids=["small", "shipped"])
def test_nothing_nearer_is_missed(world: Callable[[], World]) -> None:
    """Where one change is enough, those are told that trying every one finds; else none of them is told."""
    made = world()
    cards = list(made.content.cards.values())

    @settings(max_examples=40, suppress_health_check=list(HealthCheck))
    @given(st.binary(min_size=LENGTH, max_size=LENGTH), st.integers(0, len(cards) - 1))
    def run(drawn: bytes, number: int) -> None:
        client, card = made.client(drawn), cards[number]
        (judged,) = made.judged(client, [card])
        told = would_change(trial(made, client), judged)
        possible = set(single_changes(made, client, card))
        named = [(name, one.answer) for one in told for name in one.set]
        if possible:
            assert set(named) <= possible
            assert len(named) == min(MOST, len(possible))
        else:
            assert all(len(one.set) == 2 for one in told)
        assert all(one.answer in ANSWERS and one.answer != judged.at_worst for one in told)

    run()
