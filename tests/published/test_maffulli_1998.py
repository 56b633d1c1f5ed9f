"""A torn Achilles tendon: the calf squeeze decides, not whether the client can walk.

Maffulli N, Am J Sports Med 1998;26:266-270: squeeze test sensitivity 0.96 and specificity 0.93, gap 0.73 and
0.89; at least two tests were positive in all 174. One positive sign is enough here: own default, the safer.
"""

import pytest

from builder.judge.space import Value
from tests.content.clients import CALM, client, option, seen
from tests.content.library import content

CALF: dict[str, Value] = {"injury": "strain", "region": "calf"}
SQUEEZE, GAP = "achilles_squeeze_still", "tendon_gap"


@pytest.mark.parametrize("sign", [SQUEEZE, GAP])
def test_one_sign_refers_the_same_day(sign: str) -> None:
    """A still foot, or a gap, each alone (Maffulli 1998)."""
    session = seen(client(24, CALM, CALF, {sign: "yes"})).session
    assert (session.answer, session.urgency) == ("refer", "same_day")


def test_the_squeeze_finds_more_than_the_gap() -> None:
    """0.96 against 0.73: a tendon without a gap is still torn when the foot stays still (Maffulli 1998)."""
    values = client(24, CALM, CALF, {SQUEEZE: "yes", GAP: "no"})
    assert seen(values).session.urgency == "same_day"


def test_a_client_who_can_walk_is_referred_all_the_same() -> None:
    """Four steps and a pain-free contraction change nothing (Maffulli 1998)."""
    walks: dict[str, Value] = {"cannot_take_four_steps": "no", "active_contraction": "mild_pain"}
    assert seen(client(24, CALM, CALF, walks, {SQUEEZE: "yes"})).session.urgency == "same_day"


@pytest.mark.parametrize(
    "card", ["stretch", "contract_relax", "friction", "glide", "cold_massage", "move_active"]
)
def test_nothing_pulls_or_presses_on_it(card: str) -> None:
    """No stretch, no friction, no movement while it may be torn through (Maffulli 1998)."""
    assert option(seen(client(24, CALM, CALF, {SQUEEZE: "yes"})), card).answer in ("not_yet", "barred")


def test_without_either_sign_the_rules_are_silent() -> None:
    """The near miss: a foot that moves and no gap."""
    session = seen(client(24, CALM, CALF, {SQUEEZE: "no", GAP: "no"})).session
    assert not {"achilles_rupture", "tendon_with_gap"} & {one.id for one in session.rules}


def test_the_rules_name_the_source() -> None:
    """Both signs rest on it."""
    assert all(
        "maffulli1998" in content().rules[one].source for one in ("achilles_rupture", "tendon_with_gap")
    )
