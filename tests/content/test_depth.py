"""What the shipped content says beyond the common visits: risks, gentle cards, and grades by function."""

from decimal import Decimal

import pytest

from builder.judge.space import Value
from builder.model.condition import atoms
from tests.content.clients import HEALED, HOT, client, option, seen
from tests.content.library import content, judge


def test_a_blow_to_the_head_with_thin_blood_is_an_emergency() -> None:
    """Not feeling right after a blow is seen the same day, and at once where the blood is thin."""
    dizzy = client(18, HOT, {"suspected_concussion": "yes"})
    assert seen(dizzy).session.urgency == "same_day"
    assert seen({**dizzy, "anticoagulant": "yes"}).session.urgency == "emergency"


def test_two_risks_for_bone_keep_deep_work_and_pulling_off_a_bruised_thigh() -> None:
    """With two of the five findings friction and stretch wait for a clinician's word; light strokes stay."""
    values = client(720, HEALED, {"bone_risk": "yes"})
    frame, cleared = seen(values), seen({**values, "cleared": "yes"})
    assert [option(frame, card).answer for card in ("friction", "stretch", "glide")] == [
        "barred",
        "barred",
        "ok",
    ]
    assert [option(cleared, card).answer for card in ("friction", "stretch")] == ["ok", "ok"]


@pytest.mark.parametrize(
    ("card", "limit"),
    [("move_passive", {"pain_limit": Decimal(3)}), ("scar_glide", {"minutes": Decimal(11)})],
)
def test_the_gentle_cards_keep_their_limits(card: str, limit: dict[str, Value]) -> None:
    """Passive movement without any pain and scar work of ten minutes are right late, and past it change."""
    frame = seen(client(720, HEALED))
    assert option(frame, card).right
    assert option(frame, card, limit).answer == "change"


def test_tapping_stays_off_the_injury() -> None:
    """Percussion is never open on the injury; beside healed tissue it is, and thin blood bars it."""
    healed = client(720, HEALED)
    frame = seen(healed)
    assert option(frame, "percuss").answer == "not_yet"
    assert option(frame, "percuss", site="adjacent").right
    thin = seen({**healed, "anticoagulant": "yes"})
    assert option(thin, "percuss", site="adjacent").answer == "barred"


@pytest.mark.parametrize("injury", ["contusion", "strain", "sprain"])
@pytest.mark.parametrize(
    ("range_left", "possible"),
    [
        ("near_full", ("mild",)),
        ("half", ("moderate",)),
        ("little", ("severe",)),
        (None, ("mild", "moderate", "severe")),
    ],
)
def test_range_left_shows_how_bad_it_is_at_least(
    injury: str, range_left: str | None, possible: tuple[str, ...]
) -> None:
    """At 40 hours range grades a bruise, a strain and an ankle sprain; unmeasured, anything may be."""
    values = client(40, {"injury": injury, "region": "ankle"})
    values |= {} if range_left is None else {"range": range_left}
    assert judge().frame(values, "mild", None).severity.possible == possible
    assert judge().frame(values, "severe", None).severity.possible == ("severe",)


def test_a_limb_in_danger_is_not_graded() -> None:
    """With pain out of proportion the range of a bruised forearm says nothing of the bruise."""
    values = client(20, {"region": "forearm", "range": "little", "pain_out_of_proportion": "yes"})
    assert judge().frame(values, "moderate", None).severity.possible == ("moderate",)


def test_nothing_taught_as_background_is_judged_by() -> None:
    """A score or an image grade is taught and reported; none of its own measures is recorded."""
    named = {
        atom.name
        for listed in content().severity.background.values()
        for row in listed.rows
        if row.when is not None
        for atom in atoms(row.when)
    }
    assert named & set(content().facts.facts) <= {"age", "hours"}
