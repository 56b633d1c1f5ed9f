"""Cross-fibre friction: warmed, muscle slack, short at first, a day between.

Ombregt L, A System of Orthopaedic Medicine: alternate days, skin and finger as one, muscle slack; longer
when chronic. Two to five minutes for muscle and ligament: common practice. Two minutes at most in late
repair: own default.
"""

from decimal import Decimal

import pytest

from builder.judge.space import Value
from tests.content.clients import HEALED, client, option, seen
from tests.content.library import content

STRAIN: dict[str, Value] = {"injury": "strain"}


@pytest.mark.parametrize(
    ("hours", "minutes", "answer"), [(720, 5, "ok"), (720, 6, "change"), (384, 2, "ok"), (384, 3, "change")]
)
def test_the_minutes_follow_the_phase(hours: int, minutes: int, answer: str) -> None:
    """Five minutes in remodelling (common practice), two in late repair (own default)."""
    judged = option(seen(client(hours, HEALED, STRAIN)), "friction", {"minutes": Decimal(minutes)})
    assert judged.at_worst == answer


@pytest.mark.parametrize("written", [{"warmed": "no"}, {"every_other_day": "no"}])
def test_it_is_warmed_and_rested(written: dict[str, Value]) -> None:
    """Cold tissue or every day has to change (Ombregt)."""
    assert option(seen(client(720, HEALED)), "friction", written).answer == "change"


def test_the_stroke_is_across_a_slack_muscle() -> None:
    """The card says across, on a slack muscle (Ombregt)."""
    card = content().cards["friction"]
    assert (card.stroke, card.muscle) == ("across", "slack")
