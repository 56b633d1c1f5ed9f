"""Every rule's own examples, tried."""

from typing import Any

import pytest

from builder.judge.examples import failed_examples
from builder.judge.judge import Judge
from tests.judge.small import content, rule

OLD = {"all": [{"age": {"at_least": 60}}, {"numb_skin": "yes"}]}
BARS = [{"groups": ["cold"], "answer": "barred"}]


def failed(when: dict[str, Any], *examples: tuple[str, dict[str, Any]]) -> list[tuple[str, int, str, str]]:
    """The examples of one rule that do not come out as it says."""
    told = [{"fires": fires, "given": given} for fires, given in examples]
    made = content(rules=[rule("old", when, options=BARS, examples=told)])
    found = failed_examples(made.rules, Judge(made).space)
    return [(one.rule, one.index, one.expected, one.found) for one in found]


def test_good_examples_are_silent() -> None:
    """At the limit and under it, the examples come out as the rule says."""
    fires = ("yes", {"age": 60, "numb_skin": "yes"})
    assert failed(OLD, fires, ("no", {"age": 59, "numb_skin": "yes"}), ("no", {"numb_skin": "no"})) == []


@pytest.mark.parametrize(
    ("example", "expected", "found"),
    [
        (("yes", {"age": 59, "numb_skin": "yes"}), "yes", "no"),
        (("no", {"age": 60, "numb_skin": "yes"}), "no", "yes"),
        (("yes", {"age": 60}), "yes", "open"),
        (("no", {"age": 60}), "no", "open"),
    ],
)
def test_an_example_that_fails_is_told(
    example: tuple[str, dict[str, Any]], expected: str, found: str
) -> None:
    """Wrong, and open for want of a fact, are both failures, told by number."""
    assert failed(OLD, ("no", {"age": 1}), example) == [("old", 1, expected, found)]


def test_derived_facts_and_written_attributes_may_be_given() -> None:
    """A rule on phase, referral or dose is tried like any other."""
    when = {"phase": "acute", "session_urgency": "none", "written.minutes": {"over": 10}}
    given = {"phase": "acute", "session_urgency": "none", "written.minutes": 11}
    assert failed(when, ("yes", given), ("no", {**given, "written.minutes": 10})) == []
