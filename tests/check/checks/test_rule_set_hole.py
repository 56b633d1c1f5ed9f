"""The holes of the rule set, each with its witness and where to mend it."""

from dataclasses import replace

import pytest

from builder.check.checks.rule_set_hole import check
from builder.check.evidence import Finding
from builder.model.judgement import Hole
from builder.place import Place, Places
from tests.check.small_course import evidence
from tests.judge.small import CARDS, RULES, content, rule


def test_a_rule_set_without_a_hole_is_silent() -> None:
    """The small one."""
    assert list(check(evidence())) == []


@pytest.mark.parametrize(
    ("hole", "file", "message", "remedy", "rules"),
    [
        (
            Hole("never_fires", "idle", "No client can."),
            "content/rules/idle.yml",
            "Rule idle can never fire. Witness: No client can.",
            "Correct its condition, or delete it.",
            ("idle",),
        ),
        (
            Hole("flag_leaves_open", "fever: stroke", "fever: yes"),
            "content/rules/fever.yml",
            "A stop rule leaves hands-on work open (fever: stroke). Witness: fever: yes",
            "Bar the card in the rule's options.",
            ("fever",),
        ),
        (
            Hole("consent_leaves_open", "stroke", "consent: no"),
            "content/cards/stroke.yml",
            "Without consent a hands-on card is open (stroke). Witness: consent: no",
            "Bar the card where `consent` is `no`.",
            (),
        ),
        (
            Hole("flag_goes_on", "fever", "fever: yes"),
            "content/facts.yml",
            "The red flag `fever` never refers by itself. Witness: fever: yes",
            "Write a rule that refers on it, or give the fact another group.",
            (),
        ),
        (
            Hole("fact_changes_nothing", "numb_skin", "None."),
            "content/facts.yml",
            "The fact `numb_skin` warns of something and changes no answer. Witness: None.",
            "Write a rule on it, or give the fact another group.",
            (),
        ),
        (
            Hole("contradiction", "cold, on: minutes", "age: 100"),
            "content/cards/cold.yml",
            "What must be written for a card can not be met (cold, on: minutes). Witness: age: 100",
            "Bar the card there, or let the limits and needs agree.",
            (),
        ),
        (
            Hole("dead_end", "limit", "numb skin: yes"),
            "course.yml",
            "No card is open for the aim `limit` in some situation. Witness: numb skin: yes",
            "Add or open a card that serves it.",
            (),
        ),
    ],
)
def test_each_sort_of_hole_is_told(
    hole: Hole, file: str, message: str, remedy: str, rules: tuple[str, ...]
) -> None:
    """In the rule it is about, or for the course as a whole."""
    found = check(replace(evidence(), holes=(hole,)))
    path = ("facts", hole.about) if file.endswith("facts.yml") else ()
    assert list(found) == [Finding(file, path, message, remedy, rules)]


def test_a_hole_of_the_rules_is_found_from_end_to_end() -> None:
    """What the proof finds in a faulty rule set comes out as things to fix."""
    idle = rule("idle", {"fever": "yes", "cool_head": "yes"}, session={"urgency": "days"})
    made = content(rules=[*RULES, idle], cards=[one for one in CARDS if one["id"] != "ask"])
    assert [one.message.split(" Witness")[0] for one in check(evidence(rules=made))] == [
        "Rule idle can never fire.",
        "No card is open for the aim `ask` in some situation.",
    ]


def test_a_hole_of_a_rule_of_the_course_is_told_in_its_file() -> None:
    """Where the author can mend it."""
    made = replace(evidence(), holes=(Hole("never_fires", "idle", "None."),))
    places = {"rules/idle.yml": Places(Place("rules/idle.yml"))}
    (found,) = check(replace(made, course=replace(made.course, places=places)))
    assert found.file == "rules/idle.yml"


@pytest.mark.parametrize(
    ("hole", "file", "path", "message"),
    [
        (
            Hole("bands_overlap", "thigh: mild and moderate", "knee bend: 90°"),
            "content/severity.yml",
            ("tables", "thigh"),
            "Two rows of a table hold for one value (thigh: mild and moderate). Witness: knee bend: 90°",
        ),
        (
            Hole("bands_gap", "clocks", "tissue: tendon; severity: mild"),
            "content/phases.yml",
            ("clocks",),
            "A table leaves a value without a row (clocks). Witness: tissue: tendon; severity: mild",
        ),
        (
            Hole("bands_of_another", "thigh", "measured: range; bounded: bend"),
            "content/severity.yml",
            ("tables", "thigh"),
            "The table `thigh` measures one fact and bounds another. Witness: measured: range; bounded: bend",
        ),
        (
            Hole("clock_runs_back", "tendon mild", "72 h, 48 h, 96 h"),
            "content/phases.yml",
            ("clocks",),
            "A clock ends a phase before the one before it (tendon mild). Witness: 72 h, 48 h, 96 h",
        ),
    ],
)
def test_a_fault_of_a_table_is_told_where_it_stands(
    hole: Hole, file: str, path: tuple[str, ...], message: str
) -> None:
    """In the file of severities or of phases."""
    (told,) = check(replace(evidence(), holes=(hole,)))
    assert (told.file, told.path, told.message) == (file, path, message)
