"""The rule set as a whole must have no dead end, no flag that leaves hands-on work open, and no idle rule."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, content_file
from builder.diagnostic import Level

LEVEL: Level = "error"
SAYS = {
    "never_fires": ("Rule {about} can never fire.", "Correct its condition, or delete it."),
    "flag_leaves_open": (
        "A stop rule leaves hands-on work open ({about}).",
        "Bar the card in the rule's options.",
    ),
    "dead_end": (
        "No card is open for the aim `{about}` in some situation.",
        "Add or open a card that serves it.",
    ),
}


def check(evidence: Evidence) -> Iterator[Finding]:
    """The holes that the proof found, each with its witness."""
    for hole in evidence.holes:
        message, remedy = SAYS[hole.sort]
        said = f"{message.format(about=hole.about)} Witness: {hole.witness}"
        name = hole.about.split(":")[0]
        if hole.sort == "dead_end":
            yield Finding("course.yml", (), said, remedy)
        else:
            yield Finding(content_file(evidence, f"rules/{name}.yml"), (), said, remedy, (name,))
