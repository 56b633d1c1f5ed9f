"""Who is asked for what: on the shipped content, a sign counts on every region, asked for there or not."""

from decimal import Decimal

import pytest

from builder.judge.space import Value
from builder.model.tables import Severity
from tests.content.clients import client, option, seen
from tests.content.library import content

ARM: dict[str, Value] = {"region": "upper_arm"}
BOUND = sorted(name for name, fact in content().facts.facts.items() if fact.asked_where)
FLAGS = [name for name in BOUND if content().facts.facts[name].group == "red_flag"]


@pytest.mark.parametrize("flag", FLAGS)
def test_a_flag_of_the_leg_found_on_an_arm_case_refers(flag: str) -> None:
    """Nobody has to ask an arm for the signs of a leg, but who has found one does not go on."""
    values = client(80, ARM, screen="upper_limb_with_cold")
    assert seen(values).session.answer == "go_on"
    assert seen({**values, flag: "yes"}).session.answer == "refer"


@pytest.mark.parametrize("flag", [name for name in FLAGS if name != "arm_swelling_no_cause"])
def test_a_leg_that_is_not_asked_for_its_flags_waits(flag: str) -> None:
    """Each is asked on some region of the leg."""
    regions = {"thigh", "knee", "calf", "ankle"}
    asked = set()
    for region in regions:
        values = client(80, {"region": region})
        del values[flag]
        asked |= {one.fact for one in seen(values).session.ask}
    assert flag in asked


@pytest.mark.parametrize(
    ("index", "wrap", "cold"),
    [
        ("0.59", "barred", "barred"),
        ("0.6", "barred", "barred"),
        ("0.8", "barred", "barred"),
        ("0.81", "ok", "ok"),
    ],
)
def test_a_reported_index_counts_whatever_the_client_knows(index: str, wrap: str, cold: str) -> None:
    """Beside a no to narrowed arteries, an index of 0.8 or less bars cold, and wraps without a word."""
    values = client(40, {"arterial_disease": "no", "ankle_brachial": Decimal(index)})
    frame = seen(values)
    assert (option(frame, "wrap_pad").answer, option(frame, "cold_pack").answer) == (wrap, cold)


@pytest.mark.parametrize(
    ("injury", "region", "found", "grade"),
    [
        ("contusion", "calf", {"range_percent": "51"}, "mild"),
        ("contusion", "calf", {"range_percent": "50"}, "moderate"),
        ("contusion", "calf", {"range_percent": "34"}, "moderate"),
        ("contusion", "calf", {"range_percent": "33"}, "severe"),
        ("strain", "thigh", {"strength_percent": "76"}, "mild"),
        ("strain", "thigh", {"strength_percent": "75"}, "moderate"),
        ("strain", "thigh", {"strength_percent": "50"}, "severe"),
        ("strain", "thigh", {"image_grade": "grade_1"}, "mild"),
        ("strain", "thigh", {"image_grade": "grade_2"}, "moderate"),
        ("strain", "thigh", {"image_grade": "grade_3"}, "severe"),
        ("sprain", "ankle", {"drawer_loose": "no"}, "mild"),
        ("sprain", "ankle", {"drawer_loose": "yes"}, "severe"),
        ("sprain", "ankle", {}, "mild"),
    ],
)
@pytest.mark.parametrize("hours", [30, 200])
def test_a_measure_that_not_every_visit_takes_only_makes_worse(
    injury: str, region: str, found: dict[str, str], grade: Severity, hours: int
) -> None:
    """Range left against the other side (ISMuLT 2013: half and a third); the other cut points are our own."""
    numbers: dict[str, Value] = {name: Decimal(one) if one.isdigit() else one for name, one in found.items()}
    basics: dict[str, Value] = {"injury": injury, "region": region, "range": "full"}
    values = client(hours, basics, numbers)
    assert seen(values, "mild").severity.possible == (grade,)
