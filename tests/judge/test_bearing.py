"""What bears on a card, compiled: the quick answer and the one with reasons are the same."""

from collections.abc import Callable
from decimal import Decimal

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from builder.judge.bearing import bearings, grid, ranks_of
from builder.judge.truth import Truth, compiled
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
    """One bearing an effect, with the names and sites it is about."""
    rules = list(SMALL.content.rules.values())
    made = bearings(rules, SPACE)
    assert len(made) == sum(len(rule.options) for rule in rules)
    by_rule = {one.rule.id: one for one in made}
    assert by_rule["no_consent"].names == {"consent"}
    assert by_rule["no_consent"].rank == 3
    assert not by_rule["no_consent"].by_option
    assert by_rule["no_consent"].when(SPACE.state({"consent": "no"})) is Truth.TRUE


def test_a_grid_names_the_cell_of_each_phase_and_site() -> None:
    """The first row that names both holds; only an OK cell keeps its limits."""
    cells = grid(SMALL.content.cards["stroke"], SPACE)
    assert [cells["acute", site].row.answer for site in ("on", "proximal")] == ["barred", "ok"]
    assert len(grid(SMALL.content.cards["cold"], SPACE)["acute", "on"].limits) == 2
