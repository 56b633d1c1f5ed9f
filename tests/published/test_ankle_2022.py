"""Ankle signs in adults: they find about nine breaks in ten, so a negative screen clears nobody.

Meta-analysis, BMC Musculoskelet Disord 2022 (s12891-022-05831-7): 8560 adults, sensitivity 0.91, specificity
0.25. Its abstract lists the likelihood ratios under swapped names; they are not used.
"""

import pytest

from builder.judge.space import Value
from tests.content.clients import CALM, client, seen
from tests.content.library import content

SIGNS = ("malleolar_bone_tender", "midfoot_bone_tender", "cannot_take_four_steps")
ANKLE: dict[str, Value] = {"injury": "sprain", "tissue": "ligament", "region": "ankle"}


def test_both_figures_stand_beside_the_older_pool() -> None:
    """8560 adults and 91 %, and that it is contested (2022)."""
    listed = content().severity.background["ottawa_ankle"]
    assert "ankle2022" in listed.source
    assert "8560" in (listed.people or "")
    assert "91 %" in (listed.people or "")
    rule = content().rules["ankle_fracture_screen"]
    assert rule.contested is not None
    assert "nine breaks found in ten" in rule.contested.other


@pytest.mark.parametrize("other", ["bone_point_tender", "deformity", "tingling"])
def test_a_negative_screen_still_leaves_every_other_stop(other: str) -> None:
    """With every sign of the screen absent, another sign refers (one break in ten is missed, 2022)."""
    negative = client(24, CALM, ANKLE, dict.fromkeys(SIGNS, "no"))
    assert seen(negative).session.answer == "go_on"
    assert seen({**negative, other: "yes"}).session.answer == "refer"
