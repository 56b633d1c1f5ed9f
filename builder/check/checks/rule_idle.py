"""A rule that never decides anything, and a fact that nothing reads, make a library harder to follow."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, content_file
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "advice"
WHY = (
    "A rule that never changes an answer, and a fact that nothing asks for, are read and kept up for nothing."
)
BAD = Example(
    "rules/numb_glide.yml",
    """
    format: 1
    id: numb_glide
    title: No strokes on skin that feels less
    when: {numb_skin: yes}
    options:
      - groups: [cold]
        answer: barred
    why: The client cannot tell when it is too hard.
    source: [common_practice]
    strength: expert
    examples:
      - {fires: yes, given: {numb_skin: yes}}
      - {fires: no, given: {numb_skin: no}}
    """,
)
GOOD = Example(
    "rules/numb_glide.yml",
    """
    format: 1
    id: numb_glide
    title: No strokes on skin that feels less
    when: {numb_skin: yes}
    options:
      - cards: [glide]
        answer: barred
    why: The client cannot tell when it is too hard.
    source: [common_practice]
    strength: expert
    examples:
      - {fires: yes, given: {numb_skin: yes}}
      - {fires: no, given: {numb_skin: no}}
    """,
)


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
