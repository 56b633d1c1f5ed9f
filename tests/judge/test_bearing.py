"""What bears on a card, compiled: the quick answer and the one with reasons are the same."""

from collections.abc import Callable
from decimal import Decimal

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from builder.judge.bearing import bearings, by_limits, grid, met, ranks_of
from builder.judge.space import Value
from builder.judge.truth import Truth, compiled
from builder.model.card import HOLE
from builder.model.condition import parse
from tests.judge.laws import LENGTH, SMALL, World, shipped_world

SPACE = SMALL.judge.space


@pytest.mark.parametrize("world", [lambda: SMALL, shipped_world], ids=["small", "shipped"])
def test_the_quick_answer_is_the_one_with_reasons(world: Callable[[], World]) -> None:
    """Whatever is recorded and written, both say the same of every card, in either order."""
    made = world()

    @settings(max_examples=200, deadline=None, suppress_health_check=list(HealthCheck))
    @given(st.binary(min_size=LENGTH, max_size=LENGTH), st.booleans())
    def run(drawn: bytes, quick_first: bool) -> None:  # noqa: FBT001 - drawn by hypothesis
        client = made.client(drawn)
        frame, options = made.frame(client), made.judge.options
        for card in made.content.cards.values():
            here = frame, card, client.site, made.written(card, client)
            early = options.answers(*here) if quick_first else None
            slow = options.judge(*here)
            assert (slow.answer, slow.at_worst) == options.answers(*here) == (early or options.answers(*here))

    run()


@pytest.mark.parametrize(
    ("minutes", "certain", "moving", "ranks"),
    [
        (10, True, None, (0, 0)),
        (30, True, None, (1, 1)),
        (30, False, None, (0, 1)),
        (None, True, None, (0, 1)),
        (None, True, frozenset[str](), (1, 1)),
        (None, True, frozenset({"written.minutes"}), (0, 1)),
    ],
)
def test_a_limit_is_met_missed_or_not_written(
    minutes: int | None,
    certain: bool,  # noqa: FBT001 - a table
    moving: frozenset[str] | None,
    ranks: tuple[int, int],
) -> None:
    """What is not written asks for a change at worst; for sure where it can not become written."""
    node = parse({"written.minutes": {"at_most": 20}})
    state = SPACE.state({} if minutes is None else {"written.minutes": Decimal(minutes)})
    assert ranks_of(((node, compiled(node, SPACE)),), state, moving, certain=certain) == ranks


def test_every_effect_on_options_is_compiled_once() -> None:
    """One bearing an effect, by rule, with the names, cards and sites it is about."""
    made = bearings(list(SMALL.content.rules.values()), SMALL.content.cards, SPACE)
    assert {name: len(one) for name, one in made.items()} == {
        rule.id: len(rule.options) for rule in SMALL.content.rules.values() if rule.options
    }
    (consent,) = made["no_consent"]
    assert consent.names == {"consent"}
    assert consent.cards == {one.id for one in SMALL.hands_on}
    assert consent.rank == 3
    assert not consent.by_option
    assert consent.when(SPACE.state({"consent": "no"})) is Truth.TRUE


def test_a_grid_names_the_cell_of_each_phase_and_site() -> None:
    """The first row that names both holds; only an OK cell keeps its limits; a hole bars."""
    card = SMALL.content.cards["stroke"]
    cells = grid(card, SPACE)
    assert [cells["acute", site].row.answer for site in ("on", "proximal")] == ["barred", "ok"]
    assert len(grid(SMALL.content.cards["cold"], SPACE)["acute", "on"].limits) == 2
    assert grid(card.model_copy(update={"baseline": ()}), SPACE)["acute", "on"].row is HOLE


@pytest.mark.parametrize(
    ("minutes", "certain", "rank", "said"),
    [
        (10, True, 0, (0, 0, 0)),
        (30, True, 0, (1, 1, 1)),
        (30, False, 0, (0, 1, 1)),
        (None, True, 0, (0, 1, 1)),
        (10, True, 3, (3, 3, 0)),
        (10, False, 3, (0, 3, 0)),
        (30, True, 3, (3, 3, 1)),
    ],
)
def test_limits_only_make_an_answer_worse(
    minutes: int | None,
    certain: bool,  # noqa: FBT001 - a table
    rank: int,
    said: tuple[int, int, int],
) -> None:
    """As it surely is, at worst, and how many changes are asked for."""
    node = parse({"written.minutes": {"at_most": 20}})
    state = SPACE.state({} if minutes is None else {"written.minutes": Decimal(minutes)})
    sure, worst, changes = by_limits(((node, compiled(node, SPACE)),), state, rank, SPACE, certain=certain)
    assert (sure, worst, len(changes)) == said


def test_how_far_limits_are_met_is_one_number() -> None:
    """No two patterns of the same limits share it, nor two starts."""
    nodes = [parse({"written.minutes": {"at_most": 20}}), parse({"written.barrier": "yes"})]
    limits = tuple((node, compiled(node, SPACE)) for node in nodes)
    states: list[dict[str, Value]] = [
        {**minutes, **barrier}
        for minutes in ({}, {"written.minutes": Decimal(5)}, {"written.minutes": Decimal(25)})
        for barrier in ({}, {"written.barrier": "yes"}, {"written.barrier": "no"})
    ]
    codes = {met(limits, SPACE.state(one), start) for one in states for start in range(3)}
    assert len(codes) == 27
