"""Phases as they are taught: common practice, no source; the day a phase ends is our own default."""

from decimal import Decimal

import pytest

from builder.judge.space import Value
from builder.model.tables import SEVERITIES
from tests.content.clients import CALM, HEALED, HOT, client, option, seen
from tests.content.library import content

DAY = 24
HELD_OFF = ("glide", "knead", "press", "strip", "friction", "broaden_passive", "lengthen_passive", "percuss")
STEPS = ("friction", "broaden_passive", "broaden_active", "lengthen_passive", "lengthen_active")


def test_the_acute_phase_lasts_from_days_to_a_week() -> None:
    """Acute for a day to a week, here two days at least, by severity (common practice, no source)."""
    assert all(DAY <= clock.acute_until <= 7 * DAY for clock in content().phases.clocks)
    assert {clock.acute_until for clock in content().phases.clocks} == {48, 72, 7 * DAY}


def test_early_repair_ends_after_one_to_four_weeks() -> None:
    """Until one to three weeks in muscle and ligament, four in a torn tendon (common practice)."""
    ends = {
        (clock.tissue, clock.severity): clock.early_repair_until / DAY for clock in content().phases.clocks
    }
    assert all(
        7 <= ends[tissue, severity] <= 21 for tissue in ("muscle", "ligament") for severity in SEVERITIES
    )
    assert max(ends.values()) == 28


@pytest.mark.parametrize("hours", [24, 48, 71])
@pytest.mark.parametrize("card", HELD_OFF)
def test_hands_hold_off_for_one_to_three_days(card: str, hours: int) -> None:
    """Between 24 and 72 hours nothing is done by hand on a moderate injury (common practice, no source)."""
    assert option(seen(client(hours, HOT)), card).answer == "not_yet"


def test_swelling_that_rises_on_day_three_is_acute() -> None:
    """Day 3, still rising: back to acute, cold and compression (common practice, no source)."""
    later = client(3 * DAY + 20, {**CALM, "swelling_trend": "rising"})
    assert seen({**later, "swelling_trend": "falling"}, "mild").phase.possible == ("early_repair",)
    frame = seen(later, "mild")
    assert frame.phase.possible == ("acute",)
    assert option(frame, "cold_pack").right
    assert option(frame, "wrap_pad").right


def test_hurt_again_yesterday_is_day_one() -> None:
    """Day 9 of the first injury, hurt again a day ago: acute (own default, after common practice)."""
    again: dict[str, Value] = {"reinjured": "yes", "hours_since_first": Decimal(9 * DAY)}
    assert seen(client(DAY, {**CALM, **again})).phase.possible == ("acute",)


def test_remodelling_goes_from_friction_to_active_lengthening() -> None:
    """The order of invasiveness as taught, the mildest first (common practice, no trial of the order)."""
    cards = content().cards
    assert [cards[name].order for name in STEPS] == [1, 2, 3, 4, 5]
    assert all(option(seen(client(30 * DAY, HEALED)), name).right for name in STEPS)


def test_what_is_from_memory_says_so() -> None:
    """Signs and intervals that no reading confirmed name their source as memory."""
    rules, cards = content().rules, content().cards
    remembered = {name for name, rule in rules.items() if "from_memory" in rule.source}
    assert {"spine_injury", "nerves_of_the_pelvis", "limb_without_blood", "suspected_clot_arm"} <= remembered
    assert "from_memory" in cards["stretch"].cell("none", "on").source
    assert "from_memory" in content().severity.background["strain_by_function"].source
    assert rules["fresh_steroid_injection"].contested is not None
