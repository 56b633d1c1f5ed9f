"""The cases should show the rules at work: each stop rule, with a near miss, and most of the others."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.sample_rule import FILE, GOOD_RULE, sample_rule

LEVEL: Level = "advice"
WHY = (
    "A rule that no case shows is not learnt. A stop rule is learnt best by two visits that differ "
    "in a single fact."
)
BAD = Example(
    FILE,
    sample_rule(
        when="{age: {at_least: 70}, numb_skin: yes}",
        fires="{age: 80, numb_skin: yes}",
        does_not="{age: 60, numb_skin: yes}",
    ),
)
GOOD = Example(FILE, GOOD_RULE)
WISHED = 80


def check(evidence: Evidence) -> Iterator[Finding]:
    """The stop rules that decide no visit or have no near miss, and the other rules that decide no option.

    At least 80 in 100 of the others should decide one; the share is a wish of this house, without a source.
    A rule that can decide nothing at all is no matter of cases (`rule_idle`, `rule_set_hole`).
    """
    rules = evidence.course.content.rules
    idle_anyhow = {hole.about for hole in evidence.holes if hole.sort in ("never_decides", "never_fires")}
    covered = [one for one in evidence.covered if one.rule not in idle_anyhow]
    stops = [one for one in covered if rules[one.rule].session]
    others = [one for one in covered if not rules[one.rule].session]
    if idle := tuple(one.rule for one in stops if not one.decides):
        yield _finding(
            f"{len(idle)} of {len(stops)} stop rules decide no visit of a case.",
            "Add a visit for each on which the session turns on it.",
            idle,
        )
    if alone := tuple(one.rule for one in stops if not one.near_miss):
        yield _finding(
            f"{len(alone)} of {len(stops)} stop rules have no near miss.",
            "Add a visit for each on which it would fire if a single fact were different.",
            alone,
        )
    if idle := tuple(one.rule for one in others if not one.decides):
        share = 100 * (len(others) - len(idle)) // len(others)
        yield _finding(
            f"{len(idle)} of {len(others)} other rules decide no option of a case.",
            f"Add visits with an option that turns on them; {share} % do, {WISHED} % are wished for.",
            idle,
        )


def _finding(message: str, remedy: str, rules: tuple[str, ...]) -> Finding:
    return Finding("course.yml", (), message, remedy, rules)
