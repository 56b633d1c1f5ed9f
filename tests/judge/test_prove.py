"""Proofs over every client: each sort of hole, planted and found with its witness."""

from typing import Any

import pytest

from builder.judge.judge import Judge
from builder.judge.prove import flag_table, holes, open_client
from builder.model.judgement import Hole
from tests.judge.small import CARDS, RULES, card, content, rule

BAR_ALL = [{"groups": ["all"], "answer": "barred"}]


def found(rules: list[dict[str, Any]] | None = None, cards: list[dict[str, Any]] | None = None) -> list[Hole]:
    """The holes of the small content, or of one with other rules or cards."""
    made = content(rules=rules, cards=cards)
    return holes(made, Judge(made).space)


def without(name: str, written: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """Rules or cards but one."""
    return [one for one in written if one["id"] != name]


def test_the_small_rule_set_has_no_hole() -> None:
    """The faults below are found in what is planted, not in what is there."""
    assert found() == []


@pytest.mark.parametrize(
    "when",
    [
        {"knee_flexion": {"over": 90, "below": 45}},
        {"fever": "yes", "cool_head": "yes"},
        {"injury": "soreness", "phase": "acute"},
        {"phase": "remodelling", "hours": {"below": 48}},
        {"phase": "early_repair", "swelling": "rising"},
        {"session_urgency": "emergency"},
        {"session_urgency": "none", "fever": "yes"},
    ],
)
def test_a_rule_that_can_never_fire_is_found(when: dict[str, Any]) -> None:
    """Contradictions, exclusions, and what phase or referral can never be."""
    assert found([*RULES, rule("idle", when, options=BAR_ALL[:1])]) == [
        Hole("never_fires", "idle", "No client that can be recorded meets its condition.")
    ]


def test_a_rule_on_what_is_not_recorded_can_fire() -> None:
    """Asking whether something is recorded is no contradiction."""
    asks = rule(
        "asks", {"not": {"recorded": "reinjured"}}, options=[{"cards": ["cold"], "answer": "not_yet"}]
    )
    assert found([*RULES, asks]) == []


def test_a_flag_that_leaves_work_by_hand_open_is_found() -> None:
    """Without the rule that ends work by hand, the feverish client shows what is left open."""
    assert found(without("refer_ends", RULES)) == [
        Hole("flag_leaves_open", "fever: stroke", "referral: same day; fever: yes; cool head: no")
    ]


def test_a_flag_that_leaves_one_site_open_is_found() -> None:
    """Barred on the injury alone is not barred."""
    here = rule(
        "here",
        {"session_urgency": "same_day"},
        options=[{"cards": ["stroke"], "sites": ["on"], "answer": "barred"}],
    )
    (hole,) = found([*without("refer_ends", RULES), here])
    assert (hole.sort, hole.about) == ("flag_leaves_open", "fever: stroke")


def test_a_milder_referral_may_leave_work_open() -> None:
    """Only an emergency and the same day end all work by hand."""
    assert found([*RULES, rule("stiff", {"swelling": "rising"}, session={"urgency": "days"})]) == []


@pytest.mark.parametrize(
    ("missing", "expected"),
    [
        (
            "protect",
            [("limit", "numb skin: yes"), ("ease", "injury: soreness; phase: none")],
        ),
        ("refer", [("refer", "referral: same day; fever: yes; cool head: no")]),
        ("ask", [("ask", "any client")]),
    ],
)
def test_a_situation_without_a_right_choice_is_found(missing: str, expected: list[tuple[str, str]]) -> None:
    """Each aim that no open card serves is told, with the plainest client who shows it."""
    dead = [Hole("dead_end", aim, witness) for aim, witness in expected]
    rules = [one for one in RULES if missing != "refer" or one["id"] != "refer_soon_enough"]
    assert found(rules, without(missing, CARDS)) == dead


def test_a_rule_that_bars_all_makes_a_dead_end() -> None:
    """A rule that shuts the last door is seen where it fires."""
    shut = rule("shut", {"age": {"over": 90}}, options=BAR_ALL)
    (limit, *more) = found([*RULES, shut])
    assert (limit.sort, limit.about, limit.witness) == ("dead_end", "limit", "age: 100")
    assert [one.about for one in more] == ["clear", "restore", "restore", "ease"]


def test_a_witness_names_only_what_must_be_remarkable() -> None:
    """Everything the fault does not need is left at its safest and not told."""
    shut = rule("shut", {"knee_flexion": {"below": 30}, "numb_skin": "yes"}, options=BAR_ALL)
    assert found([*RULES, shut])[0].witness == "knee bend: 15°; numb skin: yes"


def test_the_flag_table_has_no_empty_cell() -> None:
    """For each flag and each card for the hands, whether all of it is stopped."""
    knead = card(
        "knead", "technique", ["restore"], [{"phase": ["remodelling"], "answer": "ok"}], hands_on=True
    )
    flags = [*RULES, rule("head", {"cool_head": "no"}, session={"urgency": "emergency"})]
    made = content(rules=flags, cards=[*CARDS, knead])
    assert flag_table(made, Judge(made).space) == {
        "fever": {"stroke": True, "knead": True},
        "head": {"stroke": True, "knead": True},
    }
    open_ = content(rules=without("refer_ends", flags), cards=[*CARDS, knead])
    assert not any(cell for row in flag_table(open_, Judge(open_).space).values() for cell in row.values())


def test_work_by_hand_without_consent_is_found() -> None:
    """With the client who said no."""
    assert found(without("no_consent", RULES)) == [
        Hole("consent_leaves_open", "stroke", "consent: no"),
        Hole("fact_changes_nothing", "consent", "Every card answers the same, whatever is recorded."),
    ]


def test_a_client_for_whom_a_card_is_open_is_found_or_there_is_none() -> None:
    """The plainest client with what is given, at any site or at one."""
    made = content()
    space = Judge(made).space
    assert open_client(made, space, {"fever": "no"}, "stroke") == "any client"
    assert open_client(made, space, {"numb_skin": "yes"}, "stroke") == "numb skin: yes"
    assert open_client(made, space, {"fever": "yes"}, "stroke") is None
    assert open_client(made, space, {"phase": "acute"}, "stroke", ("on", "adjacent")) is None
    assert open_client(made, space, {"phase": "acute"}, "stroke", ("distal",)) is not None
