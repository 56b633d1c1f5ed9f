"""One visit to try changes on: what may change, and bounds that no change breaks."""

from collections.abc import Callable
from random import Random

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from builder.model.card import ANSWERS
from tests.judge.laws import LENGTH, SMALL, World, shipped_world
from tests.judge.test_change_laws import answer, barred_thrice, trial


@pytest.mark.parametrize("world", [lambda: SMALL, barred_thrice, shipped_world])
def test_no_change_breaks_the_bounds(world: Callable[[], World]) -> None:
    """Whatever some of the room is changed to, the answer at worst lies within what was said before."""
    made = world()
    cards = list(made.content.cards.values())

    @settings(max_examples=300, deadline=None, suppress_health_check=list(HealthCheck))
    @given(st.binary(min_size=LENGTH, max_size=LENGTH), st.randoms(use_true_random=False))
    def run(drawn: bytes, chance: Random) -> None:
        client, card = made.client(drawn), chance.choice(cards)
        (judged,) = made.judged(client, [card])
        tried = trial(made, client)
        room = tried.room(judged)
        left = [name for name in room if chance.random() < 0.5]
        least, most = tried.bounds(judged, {}, frozenset(left))
        cells = {name: chance.choice(room[name]) for name in left if chance.random() < 0.7}
        values = {name: cell.value for name, cell in cells.items()}
        after = ANSWERS.index(answer(made, client, card, dict(judged.written), values))
        assert least <= after <= most
        assert tried.bounds(judged, cells, frozenset()) == (after, after)

    run()


def test_only_what_is_known_and_bears_can_change() -> None:
    """No flag, age or consent, nothing unrecorded; the nearest cell first, never the present one."""
    client = SMALL.client(bytes(LENGTH)).but(swelling="falling", knee_flexion=None)
    (judged,) = SMALL.judged(client, [SMALL.content.cards["stroke"]])
    tried = trial(SMALL, client)
    room = tried.room(judged)
    assert room.keys() == {"hours", "swelling", "written.site"}
    assert [cell.value for cell in room["swelling"]] == ["none", "rising"]
    assert tried.cell(judged, "swelling").value == "falling"
