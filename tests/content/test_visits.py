"""What the shipped content says of typical visits: the way through an injury, and the traps beside it."""

from decimal import Decimal

import pytest

from builder.judge.frame import Frame
from builder.judge.space import Value
from tests.content.clients import CALM, HEALED, HOT, client, option, seen
from tests.content.library import content

LOWER = ("hip", "thigh", "knee", "calf", "shin", "ankle", "foot")
UPPER = ("shoulder", "upper_arm", "elbow", "forearm", "wrist", "hand")
SETS = [
    *(("lower_limb_with_cold", region) for region in LOWER),
    *(("upper_limb_with_cold", region) for region in UPPER),
    *(("trunk_and_neck", region) for region in ("trunk", "neck")),
]
INJURIES = ("contusion", "strain", "sprain", "tendinopathy", "soreness", "unexplained")
ELSEWHERE = {
    "malleolar_bone_tender",
    "midfoot_bone_tender",
    "achilles_squeeze_still",
    "arm_swelling_no_cause",
    "bone_risk",
    "cleared",
}


def worst(frame: Frame) -> dict[str, str]:
    """Every card's answer at worst, at its usual dose on the injury with medium pressure."""
    firm: dict[str, Value] = {"pressure": Decimal(3), "warmed": "yes"}
    return {name: option(frame, name, firm).at_worst for name in content().cards}


def right(frame: Frame) -> set[str]:
    """The techniques that are right on the injury."""
    cards = [card for card in content().cards.values() if card.kind == "technique"]
    return {card.id for card in cards if option(frame, card.id).right}


@pytest.mark.parametrize(("screen", "region"), SETS)
@pytest.mark.parametrize("injury", INJURIES)
def test_a_set_answered_no_settles_the_session(screen: str, region: str, injury: str) -> None:
    """With consent and every question of the region's set answered no, the session goes on."""
    session = seen(client(40, {"region": region, "injury": injury}, screen=screen)).session
    assert (session.answer, session.ask) == ("go_on", ())


@pytest.mark.parametrize("name", sorted(set(content().screening.covered_by("whole_body")) - ELSEWHERE))
def test_a_screening_question_left_out_is_felt(name: str) -> None:
    """A red flag not asked about is asked for; any other question left out makes some answer worse."""
    values = client(720, HEALED, {"region": "knee"}, screen="whole_body")
    before = worst(seen(values))
    del values[name]
    frame = seen(values)
    asked = {one.fact for one in frame.session.ask}
    assert name in asked if content().facts.facts[name].group == "red_flag" else worst(frame) != before


def test_a_bruised_thigh_is_followed_to_remodelling() -> None:
    """Cold and a wrap first, cold massage with light strokes next, friction to lengthening last."""
    assert right(seen(client(3, HOT))) == {"cold_pack", "wrap_pad", "elevate"}
    assert right(seen(client(144, CALM))) == {
        "cold_massage", "elevate", "glide", "lymph", "move_active", "move_passive", "wrap_pad",
    }  # fmt: skip
    remodelling = right(seen(client(720, HEALED)))
    steps = {"friction", "broaden_passive", "broaden_active", "lengthen_passive", "lengthen_active"}
    assert steps | {"move_active"} <= remodelling


def test_a_flare_with_a_known_cause_steps_back() -> None:
    """Hurt again ten hours ago, hot and swelling: acute, going on, cold and wrap right again."""
    again: dict[str, Value] = {"reinjured": "yes", "flare": "known_cause", "hours_since_first": Decimal(200)}
    values = client(10, HOT, again)
    frame = seen(values)
    assert (frame.phase.possible, frame.session.answer) == (("acute",), "go_on")
    assert right(frame) == {"cold_pack", "wrap_pad", "elevate"}


def test_light_strokes_above_the_injury_serve_from_the_start() -> None:
    """In the acute phase light lymph strokes are right above the injury and not yet right on it."""
    frame = seen(client(18, HOT))
    assert option(frame, "lymph", site="proximal").right
    assert option(frame, "lymph").answer == "not_yet"


@pytest.mark.parametrize(
    ("card", "written"),
    [
        ("cold_pack", {"minutes": Decimal(21)}),
        ("cold_pack", {"barrier": "no"}),
        ("wrap_pad", {"wrap_from": "above"}),
        ("wrap_pad", {"pad_ratio": Decimal(1)}),
    ],
)
def test_a_dose_past_its_limit_is_a_change(card: str, written: dict[str, Value]) -> None:
    """Too long, bare, wrapped from above or with too small a pad: only if changed."""
    assert option(seen(client(18, HOT)), card, written).answer == "change"


@pytest.mark.parametrize(
    ("flags", "urgency"),
    [
        (("pain_out_of_proportion",), "emergency"),
        (("tense_compartment",), "same_day"),
        (("one_sided_swelling",), "same_day"),
        (("dark_urine",), "emergency"),
        (("fever",), "same_day"),
        (("chest_pain_or_breathless",), "emergency"),
        (("muscle_gap",), "same_day"),
        (("firm_lump",), "days"),
        (("spreading_redness", "fever"), "emergency"),
    ],
)
def test_a_flag_refers_with_its_urgency(flags: tuple[str, ...], urgency: str) -> None:
    """Referring is right at the flag's urgency; no technique on the injury is."""
    frame = seen(client(40, HOT, dict.fromkeys(flags, "yes")))
    assert (frame.session.answer, frame.session.urgency) == ("refer", urgency)
    assert option(frame, "refer", {"urgency": urgency}).right
    assert right(frame) == set()


def test_too_slow_a_referral_is_a_change() -> None:
    """An emergency referred the same day has to change."""
    frame = seen(client(40, HOT, {"pain_out_of_proportion": "yes"}))
    assert option(frame, "refer", {"urgency": "same_day"}).answer == "change"


def test_taking_the_wrap_off_is_right_where_the_limb_is_in_danger() -> None:
    """With signs of compartment syndrome and a wrap on, it comes off, and the limb lies at heart level."""
    frame = seen(client(30, HOT, {"pain_out_of_proportion": "yes", "wrap_on": "yes"}))
    assert option(frame, "remove_wrap").right
    assert option(frame, "protect_and_position").right
    assert option(frame, "protect_and_position", {"height": "raised"}).answer == "change"


def test_nothing_is_done_without_asking() -> None:
    """With nothing asked, asking is right and no technique is."""
    values = {name: value for name, value in client(18, HOT).items() if value not in ("yes", "no")}
    frame = seen(values)
    assert frame.session.answer == "ask_first"
    assert option(frame, "ask").right
    assert right(frame) == set()


def test_no_consent_bars_every_technique() -> None:
    """Without consent advice is left."""
    frame = seen(client(18, HOT, {"consent": "no"}))
    assert right(frame) == set()
    assert option(frame, "advise").right


def test_a_minor_needs_a_guardian() -> None:
    """At seventeen the guardian's yes opens what its absence bars."""
    young = client(18, HOT, {"age": Decimal(17)})
    assert right(seen({**young, "guardian_consent": "no"})) == set()
    assert "cold_pack" in right(seen({**young, "guardian_consent": "yes"}))


@pytest.mark.parametrize("flag", ["numb_skin", "arterial_disease", "open_wound", "raynaud", "cold_reaction"])
def test_what_bars_the_cold_pack_bars_cold_massage(flag: str) -> None:
    """Each contraindication of cold bars both cold cards."""
    frame = seen(client(144, CALM, {flag: "yes"}))
    assert {option(frame, card).answer for card in ("cold_pack", "cold_massage")} == {"barred"}


@pytest.mark.parametrize("flag", ["anticoagulant", "bleeding_disorder", "vessel_graft"])
def test_thin_blood_bars_all_deep_work(flag: str) -> None:
    """No deep card is left open, however well the tissue has healed."""
    frame = seen(client(720, HEALED, {flag: "yes"}))
    deep = [card for card in content().cards.values() if "deep" in card.groups]
    assert {option(frame, card.id).answer for card in deep} == {"barred"}


def test_an_unasked_history_of_one_technique_leaves_the_others() -> None:
    """Not knowing about white fingers bars cold at worst, and lets gliding strokes be right."""
    values = client(144, CALM)
    del values["raynaud"]
    frame = seen(values)
    assert option(frame, "cold_pack").at_worst == "barred"
    assert option(frame, "glide").right


def test_a_severe_bruise_opens_with_clearance() -> None:
    """A severe contusion refers until it is cleared in writing, then light strokes are right in time."""
    values = client(21 * 24, CALM)
    assert seen(values, "severe").session.urgency == "days"
    assert option(seen({**values, "cleared": "yes"}, "severe"), "glide").right
