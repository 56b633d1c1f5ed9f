"""A rule's own examples come out as the rule says."""

from typing import Any

from builder.check.checks.rule_example import check
from builder.check.evidence import Finding
from tests.check.small_course import evidence
from tests.judge.small import content, rule

BARS = [{"groups": ["cold"], "answer": "barred"}]
YES = {"fires": "yes", "given": {"numb_skin": "yes"}}
NO = {"fires": "no", "given": {"numb_skin": "no"}}


def found(*examples: dict[str, Any]) -> list[Finding]:
    """What is to fix in one rule with these examples."""
    made = rule("numb", {"numb_skin": "yes"}, options=BARS, examples=list(examples))
    return list(check(evidence(rules=content(rules=[made]))))


def test_good_examples_are_silent() -> None:
    """One of each kind that comes out so."""
    assert found(YES, NO) == []


def test_a_failing_example_is_told() -> None:
    """By its number, with what it should be and what it is."""
    assert found(YES, NO, {"fires": "no", "given": {"fever": "no"}}) == [
        Finding(
            "content/rules/numb.yml",
            ("examples", 2),
            "This example should fire: no; it comes out as open.",
            "Correct the condition or the example; name every fact the condition needs.",
            ("numb",),
        )
    ]


def test_a_rule_without_an_example_of_each_kind_is_told() -> None:
    """Two that fire show nothing of where it stops."""
    assert found(YES, YES) == [
        Finding(
            "content/rules/numb.yml",
            ("examples",),
            "The rule lacks an example that fires or one that does not.",
            "Add one that fires and one that differs in a single fact and does not.",
            ("numb",),
        )
    ]
