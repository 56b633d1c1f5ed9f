"""Ankle and foot: any one sign asks for an image.

Bachmann LM et al., BMJ 2003;326:417: bone tender at the tip or rear edge of an ankle bone (6 cm), at the
base of the fifth metatarsal or the navicular, or four steps impossible both times.
"""

import pytest

from tests.content.clients import HOT, client, option, seen
from tests.content.library import content

SIGNS = ("malleolar_bone_tender", "midfoot_bone_tender", "cannot_take_four_steps")


@pytest.mark.parametrize("region", ["ankle", "foot"])
@pytest.mark.parametrize("sign", SIGNS)
def test_one_sign_is_enough(sign: str, region: str) -> None:
    """Each sign alone refers the same day and closes hands-on work (Bachmann 2003)."""
    frame = seen(client(3, HOT, {"injury": "sprain", "tissue": "ligament", "region": region, sign: "yes"}))
    assert (frame.session.answer, frame.session.urgency) == ("refer", "same_day")
    assert not option(frame, "lymph", site="proximal").right


def test_with_no_sign_the_rule_is_negative() -> None:
    """Pain there, no bone tender, four steps taken: the rule asks for no image (Bachmann 2003)."""
    frame = seen(client(3, HOT, {"injury": "sprain", "tissue": "ligament", "region": "ankle"}))
    assert frame.session.answer == "go_on"


def test_a_negative_rule_clears_nobody() -> None:
    """With every sign of the rule answered no, another spot of tender bone still refers."""
    values = client(3, HOT, {"injury": "sprain", "region": "ankle", "bone_point_tender": "yes"})
    assert seen(values).session.urgency == "same_day"


def test_the_people_it_was_studied_on_are_named() -> None:
    """27 studies with 15 581 people (Bachmann 2003); 91 % of breaks in a later pool of 8560 adults (2022)."""
    people = content().severity.background["ottawa_ankle"].people or ""
    assert all(figure in people for figure in ("27", "15 581", "8560", "91 %"))
