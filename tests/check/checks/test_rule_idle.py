"""Idle rules and facts are told as advice, where they stand."""

from dataclasses import replace

from builder.check.checks import rule_idle, rule_set_hole
from builder.check.checks.rule_idle import check
from builder.check.evidence import Finding
from builder.model.judgement import Hole
from tests.check.small_course import evidence
from tests.judge.small import RULES, content, rule

REST = "Delete it, or list it under `teaching` with the reason for having it."


def test_a_rule_set_in_which_everything_decides_is_silent() -> None:
    """The small one."""
    assert list(check(evidence())) == []


def test_a_rule_that_never_decides_is_told_from_end_to_end() -> None:
    """As advice, in its own file; nothing of it is an error."""
    idle = rule("idle", {"numb_skin": "yes"}, options=[{"cards": ["cold"], "answer": "not_yet"}])
    made = evidence(rules=content(rules=[*RULES, idle]))
    (told,) = check(made)
    assert (told.file, told.rules) == ("content/rules/idle.yml", ("idle",))
    assert told.message.startswith("Rule idle never decides an answer.")
    assert list(rule_set_hole.check(made)) == []
    assert rule_idle.LEVEL == "advice"


def test_a_fact_that_nothing_reads_is_told_where_it_is_declared() -> None:
    """With the way to keep it."""
    made = replace(evidence(), holes=(Hole("fact_unread", "score", "None names it."),))
    assert list(check(made)) == [
        Finding(
            "content/facts.yml",
            ("facts", "score"),
            "The fact `score` is read by nothing. None names it.",
            REST,
        )
    ]
