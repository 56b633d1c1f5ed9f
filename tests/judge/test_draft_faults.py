"""The known faults of the draft: mended in the shipped content, and found when planted one at a time."""

from dataclasses import replace
from time import process_time

import pytest

from builder.judge.prove import holes
from tests.judge import draft, lawbook
from tests.judge.damage import (
    Damage,
    options_changed,
    phase_applies_to,
    rows_changed,
    rows_missing,
    rule_changed,
    with_rule,
    without_rule,
)
from tests.judge.draft import FAULTS, Fault
from tests.judge.laws import World, shipped_world

NEVER = [{"groups": ["all"], "needs": {"pressure": {"at_most": 0}}}]
ALL = ("acute", "early_repair", "late_repair", "remodelling", "none")
SEVERE = {"injury": "contusion", "severity": "severe"}
REFERRED = {"session_urgency": {"at_least": "days"}}
ALONE = (
    "chest_signs",
    "fever_today",
    "possible_concussion",
    "tightness_with_effort",
    "tight_wrap",
)
HISTORY = (
    "pregnant_leg",
    "brittle_bones",
    "cancer_without_word",
    "very_mobile_joints",
    "veins_here",
    "after_surgery",
    "graft_in_limb",
    "wrap_allergy_bars_wrap",
    "whole_body_warning",
    "numb_skin_temperature",
    "fracture_point",
)
ON_NOBODY = {"age": {"at_least": 0}}
PLANTED: list[tuple[Fault, Damage]] = [
    (draft.a_changes_pass, rows_changed("cold_pack", "acute", limits={})),
    (draft.a_changes_pass, rows_changed("friction", "remodelling", limits={})),
    (draft.a_changes_pass, without_rule("no_consent")),
    (draft.b_cells_are_empty, rows_missing("knead", "early_repair")),
    (draft.b_cells_are_empty, rows_changed("broaden_active", "early_repair", answer="ok")),
    (draft.b_cells_are_empty, rows_changed("cold_massage", "acute", answer="ok")),
    (
        draft.c_cold_misses_cold_massage,
        options_changed("numb_skin_temperature", groups=(), cards=("cold_pack",)),
    ),
    (draft.c_cold_misses_cold_massage, options_changed("open_skin", groups=("hands_on",), cards=())),
    (draft.c_cold_misses_cold_massage, without_rule("cold_raynaud")),
    (draft.d_a_clot_leaves_work_open, without_rule("refer_ends_hands_on")),
    (draft.d_a_clot_leaves_work_open, options_changed("refer_ends_hands_on", sites=("on", "distal"))),
    (draft.d_a_clot_leaves_work_open, without_rule("suspected_clot_leg")),
    (
        draft.e_a_lump_or_a_tear_leaves_work_on_it,
        options_changed("bone_forming_lump", cards=("friction",), groups=()),
    ),
    (
        draft.e_a_lump_or_a_tear_leaves_work_on_it,
        rule_changed("bone_forming_lump", when={"firm_lump": "yes", "hours": {"at_most": 1008}}),
    ),
    (draft.e_a_lump_or_a_tear_leaves_work_on_it, without_rule("muscle_torn_through")),
    *((draft.f_a_flag_alone_stops_nothing, without_rule(name)) for name in ALONE),
    *((draft.g_a_history_has_no_rule, without_rule(name)) for name in HISTORY),
    (draft.g_a_history_has_no_rule, rows_changed("glide", "early_repair", answer="ok")),
    (draft.h_thin_blood_or_numbed_tissue_is_worked_deep, without_rule("thin_blood_deep")),
    (draft.h_thin_blood_or_numbed_tissue_is_worked_deep, without_rule("deep_work_on_numbed_tissue")),
    (
        draft.h_thin_blood_or_numbed_tissue_is_worked_deep,
        rule_changed("limb_without_blood", when={"cold_pale_limb": "yes", "cold_just_applied": "no"}),
    ),
    (
        draft.i_a_referral_overwrites,
        with_rule(REFERRED, options=[{"groups": ["techniques"], "answer": "barred"}]),
    ),
    (
        draft.j_nothing_serves_late_repair,
        with_rule({"phase": "late_repair"}, options=[{"groups": ["hands_on"], "answer": "not_yet"}]),
    ),
    (draft.j_nothing_serves_late_repair, rows_changed("move_active", "acute", answer="not_yet")),
    (draft.k_a_source_is_none, rows_changed("cold_pack", "acute", source=("dubois2020",))),
    (draft.k_a_source_is_none, rule_changed("thin_blood_deep", source=("contested",))),
    (draft.l_severe_is_for_ever, rule_changed("severe_contusion", when=SEVERE)),
    (draft.l_severe_is_for_ever, without_rule("severe_contusion")),
    (draft.m_a_phase_where_there_is_none, phase_applies_to(["unexplained"])),
    (draft.n_a_change_is_always_asked, with_rule(ON_NOBODY, options=NEVER)),
    (draft.n_a_change_is_always_asked, rows_changed("glide", *ALL, answer="not_yet")),
    (
        draft.o_one_history_blocks_all,
        with_rule({"raynaud": "yes"}, options=[{"groups": ["techniques"], "answer": "not_yet"}]),
    ),
]


@pytest.mark.parametrize("fault", FAULTS, ids=lambda fault: fault.__name__)
def test_the_shipped_content_is_free_of_it(fault: Fault) -> None:
    """Nothing is said against it, and the fault has been planted below at least once."""
    assert list(fault(shipped_world())) == []
    assert fault in {planted for planted, _ in PLANTED}


@pytest.mark.parametrize(
    ("fault", "damage"),
    PLANTED,
    ids=lambda one: getattr(one, "__name__", "").replace("damage", "").replace("<lambda>", ""),
)
def test_the_planted_fault_is_found(fault: Fault, damage: Damage) -> None:
    """The same content with one damage done to it."""
    assert list(fault(damage(shipped_world()))) != []


PROVEN: list[tuple[Damage, set[str]]] = [
    (without_rule("no_consent"), {"consent_leaves_open", "fact_changes_nothing"}),
    (without_rule("refer_ends_hands_on"), {"flag_leaves_open"}),
    (without_rule("fever_today"), {"flag_goes_on"}),
    (without_rule("chest_signs"), {"flag_goes_on"}),
    (without_rule("cold_reaction_bars_cold"), {"fact_changes_nothing"}),
    (without_rule("wrap_allergy_bars_wrap"), {"fact_changes_nothing"}),
    (with_rule(ON_NOBODY, options=NEVER), {"contradiction"}),
    (with_rule({"phase": "acute"}, options=[{"groups": ["all"], "answer": "barred"}]), {"dead_end"}),
    (with_rule({"fever": "yes"}, session={"urgency": "days"}), {"never_decides"}),
    (with_rule({"injury": "soreness", "phase": "acute"}, session={"urgency": "days"}), {"never_fires"}),
]


@pytest.mark.parametrize(("damage", "sorts"), PROVEN)
def test_the_proof_finds_what_was_planted(damage: Damage, sorts: set[str]) -> None:
    """These sorts of fault, each with a witness; the whole content has none."""
    world: World = damage(shipped_world())
    found = holes(world.content, world.judge.space)
    assert sorts <= {one.sort for one in found}
    assert all(one.witness for one in found)


def test_the_proof_takes_under_ten_seconds() -> None:
    """Over the shipped content with twenty rules of a course beside it, on one core."""
    shipped = shipped_world()
    own = {rule.id: rule for rule in (lawbook.course_rule(shipped, number) for number in range(20))}
    world = World(replace(shipped.content, rules={**shipped.content.rules, **own}))
    assert len(own) == 20
    space = world.judge.space
    began = process_time()
    holes(world.content, space)
    assert process_time() - began < 10


@pytest.mark.parametrize(
    "damage", [damage for fault, damage in PLANTED if fault is draft.d_a_clot_leaves_work_open]
)
def test_the_proof_of_many_faults_takes_under_ten_seconds(damage: Damage) -> None:
    """Also where hundreds are found, each with its witness."""
    world: World = damage(shipped_world())
    space = world.judge.space
    began = process_time()
    found = holes(world.content, space)
    assert process_time() - began < 10
    assert found
