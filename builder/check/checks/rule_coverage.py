"""The cases should show the rules at work: each stop rule, with a near miss, and most of the others."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level

LEVEL: Level = "advice"
WISHED = 80


def check(evidence: Evidence) -> Iterator[Finding]:
    """The stop rules that decide no visit or have no near miss, and the other rules that decide no option.

    At least 80 in 100 of the others should decide one; the share is a wish of this house, without a source.
    """
    rules = evidence.course.content.rules
    stops = [one for one in evidence.covered if rules[one.rule].session]
    others = [one for one in evidence.covered if not rules[one.rule].session]
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
