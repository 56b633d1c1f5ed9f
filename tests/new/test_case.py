"""A new case holds together, whatever it is begun with."""

from pathlib import Path

import pytest

from builder.new.case import beginnings, first_case, usual_since
from tests.content.library import content
from tests.new.begun import add, begun, course_in, faults

INJURIES = content().facts.facts["injury"].values
TIMES = ("", "6 h", "6 days", "3 weeks", "10 weeks")


def test_every_finding_of_a_new_case_is_declared() -> None:
    """With a value it may have."""
    facts = content().facts.facts
    for found in (*beginnings()["found"].values(), beginnings()["measures"]):
        for name, value in found.items():
            assert facts[name].kind == "number" or value in facts[name].words_of_values, name
    assert set(beginnings()["injuries"]) == set(INJURIES)


@pytest.mark.parametrize("injury", INJURIES)
def test_a_case_holds_for_every_injury_at_any_time(injury: str, tmp_path: Path) -> None:
    """No error and no warning: phase, options and screening are what the rules make of it."""
    folder = begun(tmp_path / "course")
    regions = content().facts.facts["region"].values
    for number, since in enumerate(TIMES):
        region = regions[(number * 4 + INJURIES.index(injury)) % len(regions)]
        tissue = ("muscle", "ligament", "tendon")[number % 3]
        given = {"since": since} if since else {}
        add("case", folder, f"Case {number}", region=region, tissue=tissue, injury=injury, **given)
    assert faults(folder) == []


def test_the_set_that_fits_the_region_is_asked(tmp_path: Path) -> None:
    """With the questions that its region needs, and none of another's; what it asks stands beside it."""
    folder = begun(tmp_path / "course")
    for region in ("ankle", "elbow", "neck"):
        add("case", folder, region, region=region)
    screens = {
        name: case.visits[0].screen.set
        for name, case in course_in(folder).cases.items()
        if case.visits[0].screen
    }
    assert screens["ankle"] == "lower_limb_with_cold"
    assert screens["elbow"] == "upper_limb_with_cold"
    assert screens["neck"] == "trunk_and_neck"
    text = (folder / "cases" / "ankle.yml").read_text(encoding="utf-8")
    assert "all_no_except: {}" in text
    assert "# It asks for: ankle bone tender;" in text
    assert "- ask: Is the area warmer than the same place on the other side?" in text


def test_a_case_begins_undecided() -> None:
    """Before it is judged, nothing is chosen for it but to refer."""
    answers = {"id": "a", "title": "A", "region": "thigh", "tissue": "muscle", "injury": "strain"}
    case = first_case({**answers, "since": usual_since("strain")}, ("phase",), "lower_limb")
    assert [one.card for one in case.visits[0].chosen] == ["refer"]
