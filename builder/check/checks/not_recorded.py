"""A fact that a chosen option waits for must be recorded."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "A choice is safe only if what it depends on was asked. What nobody recorded counts as the worst "
    "it could be."
)
BAD = Example(
    "cases/fence.yml",
    """
    screen: {set: flags}
    """,
    at="visits/0",
)
GOOD = Example(
    "cases/fence.yml",
    """
    screen: {set: flags}
    findings: {swelling_trend: steady, knee_flexion: 100, numb_skin: no}
    """,
    at="visits/0",
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Facts that nobody recorded and a chosen option depends on."""
    facts = evidence.course.content.facts.facts
    for case, index, _, judged in evidence.visits():
        missing: dict[str, dict[str, None]] = {}
        for one in (asked for option in judged.chosen for asked in option.ask):
            missing.setdefault(one.fact, {}).update(dict.fromkeys(one.rules))
        for name, rules in missing.items():
            label = facts[name].label if name in facts else name
            yield Finding(
                case_file(case),
                ("visits", index),
                f"{label} is not recorded, and a chosen option depends on it.",
                f"Add `{name}` to the findings or the history, or name a screening set that covers it.",
                tuple(rules),
            )
