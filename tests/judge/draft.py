"""The known faults of the draft, each as what is said against a rule set that has it."""

from collections.abc import Callable, Iterable, Iterator
from decimal import Decimal

from builder.doors.solver import Solver
from builder.judge.idle import Twins
from builder.judge.prove import open_client
from builder.judge.space import Value
from builder.model.card import HOLE, PHASES, SITES, Phase, Site
from builder.model.judgement import OptionJudgement
from tests.judge.laws import World, safe

Said = Iterator[str]
Fault = Callable[[World], Said]
ON: tuple[Site, ...] = ("on",)
LEG_CLOT = ("one_sided_swelling", "pitting", "deep_vein_tender", "new_surface_veins", "calf_pain_no_cause")
LATER = ("knead", "broaden_passive", "broaden_active", "stretch", "contract_relax", "percuss")
NOT_YET: tuple[tuple[Phase, tuple[str, ...]], ...] = (
    ("acute", ("press", "lymph", "scar_glide", "cold_massage", *LATER)),
    ("early_repair", LATER),
    ("late_repair", ("strip", "lengthen_passive", "lengthen_active", "broaden_active")),
)
DEEP = (
    "friction", "strip", "press", "broaden_passive", "broaden_active", "lengthen_passive", "lengthen_active",
)  # fmt: skip
CAREFUL = (
    "pregnant", "osteoporosis", "bleeding_disorder", "varicose_veins", "recent_surgery", "vessel_graft",
    "wrap_allergy", "hypermobile", "cancer_care", "numb_skin", "night_pain_or_weight_loss",
)  # fmt: skip
ALONE = (
    "chest_pain_or_breathless", "fever", "suspected_concussion", "exertional_tightness", "trouble_below_wrap",
)  # fmt: skip
AGAINST_COLD = {"dubois2020"}


def calm(world: World, hours: int, **changed: Value) -> dict[str, Value]:
    """A client with a bruise, everything recorded and at its safest but for what is changed."""
    values = {name: safe(one) for name, one in world.facts.items()}
    return {**values, "tissue_feel": "fibrous", "hours": Decimal(hours), **changed}


def judged(
    world: World, values: dict[str, Value], card: str, site: Site = "on", **written: Value
) -> OptionJudgement:
    """A card at its usual dose, or as written, for a client."""
    one, frame = world.content.cards[card], world.judge.frame(values, "mild", None)
    usual = {name: value for name, value in one.usual.items() if name != "site"}
    return world.judge.options.judge(frame, one, site, {**usual, **written})


def left_open(
    world: World, given: dict[str, Value], cards: Iterable[str], sites: tuple[Site, ...] = SITES
) -> Said:
    """The cards that some client with these facts may still have, each with that client."""
    for card in (one for one in cards if one in world.content.cards):
        if (client := open_client(world.content, world.judge.space, given, card, sites)) is not None:
            yield f"{card}: {client}"


def hands(world: World) -> list[str]:
    """The cards that are work by hand."""
    return [card.id for card in world.hands_on]


def _goes_on(world: World, flag: str, **beside: Value) -> Said:
    yield from left_open(world, {flag: "yes", "session_urgency": "none", **beside}, ["advise"])


def a_changes_pass(world: World) -> Said:
    """What should be changed counts as right: order, pressure, time, cold, no consent, no screen."""
    fresh, healed = calm(world, 3, swelling_trend="rising"), calm(world, 3000)
    unasked = {name: one for name, one in healed.items() if name not in world.flags}
    tried = {
        "not warmed first": judged(world, healed, "friction", warmed="no"),
        "pressure": judged(world, healed, "friction", pressure=Decimal(4)),
        "time": judged(world, healed, "friction", minutes=Decimal(10)),
        "cold": judged(world, fresh, "cold_pack", minutes=Decimal(21)),
        "consent": judged(world, {**healed, "consent": "no"}, "friction"),
        "screen": judged(world, unasked, "friction"),
    }
    yield from (name for name, option in tried.items() if option.right)
    if not judged(world, healed, "friction").right or not judged(world, fresh, "cold_pack").right:
        yield "as usual it is not right either"


def b_cells_are_empty(world: World) -> Said:
    """Cells without an answer, and those of the early phases that the draft leaves open."""
    for card in world.content.cards.values():
        yield from (
            f"{card.id}, {phase}" for phase in PHASES for site in SITES if card.cell(phase, site) is HOLE
        )
    for phase, cards in NOT_YET:
        yield from left_open(world, {"phase": phase}, cards, ON)


def c_cold_misses_cold_massage(world: World) -> Said:
    """What bars the cold pack leaves cold massage."""
    for flag in ("numb_skin", "arterial_disease", "open_wound", "raynaud", "cold_reaction"):
        yield from left_open(world, {flag: "yes"}, ["cold_pack", "cold_massage"])


def d_a_clot_leaves_work_open(world: World) -> Said:
    """A suspected clot leaves a stretch, movement or work elsewhere, a back massage included."""
    for flag in LEG_CLOT:
        yield from left_open(
            world, {flag: "yes", "region": "calf"}, [*hands(world), "move_active", "wrap_pad"]
        )
    arm: dict[str, Value] = {"arm_swelling_no_cause": "yes", "region": "upper_arm"}
    yield from left_open(world, arm, [*hands(world), "move_active", "wrap_pad"])


def e_a_lump_or_a_tear_leaves_work_on_it(world: World) -> Said:
    """A lump in the muscle, at any time, and a tear of tendon or muscle."""
    yield from left_open(
        world, {"firm_lump": "yes"}, [*hands(world), "cold_pack", "cold_massage", "heat"], ON
    )
    yield from _goes_on(world, "firm_lump")
    torn: list[dict[str, Value]] = [
        {"muscle_gap": "yes"}, {"tendon_gap": "yes"}, {"achilles_squeeze_still": "yes", "region": "ankle"},
    ]  # fmt: skip
    for given in torn:
        yield from left_open(world, given, [*hands(world), "move_active"])


def f_a_flag_alone_stops_nothing(world: World) -> Said:
    """Each of these by itself lets the session go on."""
    for flag in ALONE:
        yield from _goes_on(world, flag)


def g_a_history_has_no_rule(world: World) -> Said:
    """A history that changes nothing, a numb limb under a wrap, and strokes below a fresh injury."""
    with Solver() as solver:
        twins = Twins(world.content, world.judge.space, solver)
        yield from (name for name in CAREFUL if not twins.decides(name))
    yield from left_open(world, {"numb_skin": "yes"}, ["wrap_pad"])
    yield from _goes_on(world, "bone_point_tender")
    for phase in ("acute", "early_repair"):
        yield from left_open(world, {"phase": phase}, ["glide", "lymph"], ("distal",))


def h_thin_blood_or_numbed_tissue_is_worked_deep(world: World) -> Said:
    """Deep work on thin blood or on tissue numbed by cold; cold that explains a pale limb away."""
    for flag in ("anticoagulant", "bleeding_disorder"):
        yield from left_open(world, {flag: "yes"}, DEEP)
    yield from left_open(world, {"cold_just_applied": "yes"}, DEEP, ("on", "adjacent"))
    yield from _goes_on(world, "cold_pale_limb", cold_just_applied="yes")
    if "15 minutes later" not in (world.facts["cold_pale_limb"].fact.question or ""):
        yield "the question asks for no second look"


def i_a_referral_overwrites(world: World) -> Said:
    """A referral within days takes the place of what is said of techniques elsewhere."""
    client = calm(world, 800, firm_lump="yes")
    if world.judge.frame(client, "mild", None).session.answer != "refer":
        yield "it does not refer"
    if judged(world, client, "glide", "remote").answer != "ok":
        yield "light strokes elsewhere"


def j_nothing_serves_late_repair(world: World) -> Said:
    """No technique is right in late repair, or no movement without pain in the acute phase."""
    late, fresh = calm(world, 400), calm(world, 40)
    techniques = [card.id for card in world.content.cards.values() if card.kind == "technique"]
    if not any(judged(world, late, card).right for card in techniques if card in hands(world)):
        yield "late repair"
    if not judged(world, fresh, "move_active").right:
        yield "movement in the acute phase"


def k_a_source_is_none(world: World) -> Said:
    """Cold on a source that argues against it, a debate as a source, and a source that is not listed."""
    for card in world.content.cards.values():
        for row in card.baseline:
            against = AGAINST_COLD if "cold" in card.groups and row.answer == "ok" else set()
            known = world.content.references.sources.keys() - against - {"contested"}
            yield from (f"{card.id}: {name}" for name in row.source if name not in known)
    for rule in world.content.rules.values():
        yield from (
            f"{rule.id}: {name}" for name in rule.source if name not in world.content.references.sources
        )


def l_severe_is_for_ever(world: World) -> Said:
    """A severe bruise stays shut although a clinician has cleared it in writing, or opens without."""
    severe: dict[str, Value] = {"injury": "contusion", "severity": "severe"}
    if not list(left_open(world, {**severe, "cleared": "yes"}, ["glide"], ON)):
        yield "cleared and shut"
    yield from left_open(world, {**severe, "cleared": "no"}, hands(world), ON)


def m_a_phase_where_there_is_none(world: World) -> Said:
    """A phase is given, and so may be asked for, where the calendar of an injury does not apply."""
    for injury in ("tendinopathy", "soreness", "unexplained"):
        phase = world.judge.frame(calm(world, 60, injury=injury), "mild", None).phase.possible
        if phase != ("none",):
            yield injury


def n_a_change_is_always_asked(world: World) -> Said:
    """A technique that as usually written is right for nobody."""
    clients = [calm(world, hours) for hours in (3, 60, 150, 400, 3000)]
    clients += [{**one, "swelling_trend": "rising"} for one in clients[:1]]
    for card in (one for one in world.content.cards.values() if one.kind == "technique"):
        if not any(judged(world, one, card.id, site).right for one in clients for site in SITES):
            yield card.id


def o_one_history_blocks_all(world: World) -> Said:
    """A history not asked for cold or a wrap blocks work that it has nothing to do with."""
    for flag in ("raynaud", "cold_reaction", "wrap_allergy", "heart_failure"):
        client = {name: one for name, one in calm(world, 400).items() if name != flag}
        if not judged(world, client, "glide").right:
            yield flag


FAULTS: tuple[Fault, ...] = (
    a_changes_pass, b_cells_are_empty, c_cold_misses_cold_massage, d_a_clot_leaves_work_open,
    e_a_lump_or_a_tear_leaves_work_on_it, f_a_flag_alone_stops_nothing, g_a_history_has_no_rule,
    h_thin_blood_or_numbed_tissue_is_worked_deep, i_a_referral_overwrites, j_nothing_serves_late_repair,
    k_a_source_is_none, l_severe_is_for_ever, m_a_phase_where_there_is_none, n_a_change_is_always_asked,
    o_one_history_blocks_all,
)  # fmt: skip
