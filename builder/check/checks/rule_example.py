"""A rule's own examples must come out as the rule says."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, content_file
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.sample_rule import FILE, GOOD_RULE, sample_rule

LEVEL: Level = "error"
WHY = (
    "An example shows what a rule was meant to do. One that comes out otherwise shows a mistake in "
    "the rule or in the example."
)
BAD = Example(FILE, sample_rule(fires="{numb_skin: no}"))
GOOD = Example(FILE, GOOD_RULE)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Examples that fail, and rules without an example of each kind."""
    for one in evidence.failed_examples:
        yield Finding(
            content_file(evidence, f"rules/{one.rule}.yml"),
            ("examples", one.index),
            f"This example should fire: {one.expected}; it comes out as {one.found}.",
            "Correct the condition or the example; name every fact the condition needs.",
            (one.rule,),
        )
    for rule in evidence.course.content.rules.values():
        if {example.fires for example in rule.examples} != {"yes", "no"}:
            yield Finding(
                content_file(evidence, f"rules/{rule.id}.yml"),
                ("examples",),
                "The rule lacks an example that fires or one that does not.",
                "Add one that fires and one that differs in a single fact and does not.",
                (rule.id,),
            )
