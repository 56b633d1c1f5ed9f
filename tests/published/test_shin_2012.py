"""Scar massage: what the review counted, and only what adds up.

Dermatol Surg 2012;38:414-423: 27 of 30 surgical scars did better. Its 65 of 144 is printed as 45.7 %, and is
45.1 %; neither figure is used.
"""

from fractions import Fraction

from tests.content.clients import HEALED, client, option, seen
from tests.content.library import content

DAY = 24


def test_the_card_tells_the_count_and_not_the_slip() -> None:
    """27 of 30 stands on the card; 65 of 144 is 45.1 %, and no card repeats 45.7 (Dermatol Surg 2012)."""
    card = content().cards["scar_glide"]
    assert card.evidence is not None
    assert "27 of 30" in card.evidence.speaks_for
    assert round(float(Fraction(65, 144) * 100), 1) == 45.1
    assert not any("45.7" in one.model_dump_json() for one in content().cards.values())


def test_only_a_settled_scar_is_moved() -> None:
    """In remodelling it is right, two weeks earlier it waits (Dermatol Surg 2012; phases: own default)."""
    assert option(seen(client(30 * DAY, HEALED)), "scar_glide").right
    assert option(seen(client(14 * DAY, HEALED)), "scar_glide").answer == "not_yet"
    assert "shin2012" in content().cards["scar_glide"].cell("remodelling", "on").source
