"""Compartment syndrome: a missing sign rules out nothing, and two signs are an emergency.

Ulmer T, J Orthop Trauma 2002;16:572-577: a single sign has a sensitivity of 13 to 19 % and a specificity of
97 to 98 % (a summary prints them the wrong way round); with one sign the chance is about 19 to 26 %, with two
68 %. Referring the same day on one sign is our own default.
"""

from itertools import combinations

import pytest

from tests.content.clients import HOT, client, seen
from tests.content.library import content

SIGNS = ("severe_stretch_pain", "tense_compartment", "tingling", "limb_weakness")


@pytest.mark.parametrize("signs", list(combinations(SIGNS, 2)))
def test_any_two_signs_are_an_emergency(signs: tuple[str, str]) -> None:
    """Each pair of the four (Ulmer 2002)."""
    assert seen(client(24, HOT, dict.fromkeys(signs, "yes"))).session.urgency == "emergency"


@pytest.mark.parametrize("sign", SIGNS)
def test_one_sign_is_no_near_miss(sign: str) -> None:
    """A chance of one in five refers at least the same day (Ulmer 2002; own default)."""
    assert seen(client(24, HOT, {sign: "yes"})).session.urgency in ("same_day", "emergency")


def test_pain_out_of_proportion_alone_is_an_emergency() -> None:
    """With every other sign asked and absent (Ulmer 2002)."""
    assert seen(client(24, HOT, {"pain_out_of_proportion": "yes"})).session.urgency == "emergency"


def test_the_sources_stand_at_both_rules() -> None:
    """Two signs and one."""
    assert all(
        "ulmer2002" in content().rules[one].source for one in ("compartment_syndrome", "compartment_one_sign")
    )
