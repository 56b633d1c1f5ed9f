"""Cases show the rules at work, and what no case shows is named."""

from dataclasses import replace

from builder.check.checks.rule_coverage import LEVEL, check
from builder.check.evidence import Evidence, Finding
from builder.model.judgement import Covered
from tests.check.small_course import evidence
from tests.judge.small import RULES, case

NAMES = [one["id"] for one in RULES]
WHOLE = {name: Covered(name, True, True) for name in NAMES}


def told(*changed: Covered) -> list[Finding]:
    """What is said where every rule is shown but these."""
    shown = {**WHOLE, **{one.rule: one for one in changed}}
    return list(check(replace(evidence(), covered=tuple(shown.values()))))


def of_visits(found: Evidence) -> list[tuple[str, tuple[str, ...]]]:
    """The messages with the rules they name."""
    return [(one.message, one.rules) for one in check(found)]


def test_a_course_that_shows_every_rule_is_silent() -> None:
    """Nothing is left to name."""
    assert told() == []
    assert LEVEL == "advice"


def test_a_stop_rule_that_decides_nothing_is_named() -> None:
    """With how many of how many."""
    assert told(Covered("fever", False, True)) == [
        Finding(
            "course.yml",
            (),
            "1 of 1 stop rules decide no visit of a case.",
            "Add a visit for each on which the session turns on it.",
            ("fever",),
        )
    ]


def test_a_stop_rule_without_a_near_miss_is_named() -> None:
    """One that always fires where it could shows nothing of where it stops."""
    assert told(Covered("fever", True, False)) == [
        Finding(
            "course.yml",
            (),
            "1 of 1 stop rules have no near miss.",
            "Add a visit for each on which it would fire if a single fact were different.",
            ("fever",),
        )
    ]


def test_other_rules_are_summed_up_in_one_finding() -> None:
    """They need no near miss, and the share that decides is told beside the share wished for."""
    assert told(Covered("numb", False, True), Covered("no_consent", True, False)) == [
        Finding(
            "course.yml",
            (),
            "1 of 4 other rules decide no option of a case.",
            "Add visits with an option that turns on them; 75 % do, 80 % are wished for.",
            ("numb",),
        )
    ]


def test_what_the_visits_show_is_what_counts() -> None:
    """A small case with a fever and a late referral shows two rules; the flag has no near miss there."""
    visit = {
        "screen": {"set": "short", "all_no_except": {"fever": "yes"}},
        "chosen": [{"card": "refer", "written": {"urgency": "same_day"}}],
        "wrong": [{"card": "refer", "written": {"urgency": "days"}}],
        "phase": "none",
    }
    assert of_visits(evidence(case(visit))) == [
        ("1 of 1 stop rules have no near miss.", ("fever",)),
        ("3 of 4 other rules decide no option of a case.", ("refer_ends", "no_consent", "numb")),
    ]
