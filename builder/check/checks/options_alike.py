"""Two options of a visit must differ in what is shown of them."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.case import CaseOption
from builder.model.kind import Example
from builder.model.library import Course

LEVEL: Level = "error"
WHY = "Two options that read the same leave a participant to guess which of them was meant to be right."
BAD = Example(
    "cases/thigh.yml",
    """
    chosen:
      - {card: cold_pack, written: {minutes: 10, barrier: yes}}
    wrong:
      - {card: glide}
      - {card: glide, because: It is too early.}
      - {card: cold_pack, written: {minutes: 40, barrier: no}}
    """,
    at="visits/0",
)
GOOD = Example(
    "cases/thigh.yml",
    """
    chosen:
      - {card: cold_pack, written: {minutes: 10, barrier: yes}}
    wrong:
      - {card: glide}
      - {card: glide, site: adjacent, because: It is too early.}
      - {card: cold_pack, written: {minutes: 40, barrier: no}}
    """,
    at="visits/0",
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Options that read like one before them in the same visit."""
    for case, index, visit, _ in evidence.visits():
        seen: set[str] = set()
        for kind, options in (("chosen", visit.chosen), ("wrong", visit.wrong)):
            for number, option in enumerate(options):
                shown = _shown(evidence.course, option)
                if shown in seen:
                    yield Finding(
                        case_file(case),
                        ("visits", index, kind, number),
                        "This option reads exactly like another of the same visit.",
                        "Write them differently, or remove one: a reader cannot tell them apart.",
                    )
                seen.add(shown)


def _shown(course: Course, option: CaseOption) -> str:
    card = course.content.cards[option.card]
    site = option.site if card.kind == "technique" else ""
    return f"{card.name}|{site}|{sorted((name, str(value)) for name, value in option.written.items())}"
