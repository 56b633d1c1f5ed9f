"""A rule that never decides anything, and a fact that nothing reads, make a library harder to follow."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, content_file
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.sample_rule import FILE, GOOD_RULE, sample_rule

LEVEL: Level = "advice"
WHY = (
    "A rule that never changes an answer, and a fact that nothing asks for, are read and kept up for nothing."
)
BAD = Example(FILE, sample_rule(about="groups: [cold]"))
GOOD = Example(FILE, GOOD_RULE)


def check(evidence: Evidence) -> Iterator[Finding]:
    """What the proof found to be idle."""
    for hole in evidence.holes:
        if hole.sort == "never_decides":
            file = content_file(evidence, f"rules/{hole.about}.yml")
            said = f"Rule {hole.about} never decides an answer. {hole.witness}"
            yield Finding(file, (), said, "Delete it, or say where it should reach further.", (hole.about,))
        if hole.sort == "fact_unread":
            said = f"The fact `{hole.about}` is read by nothing. {hole.witness}"
            remedy = "Delete it, or list it under `teaching` with the reason for having it."
            yield Finding(content_file(evidence, "facts.yml"), ("facts", hole.about), said, remedy)
