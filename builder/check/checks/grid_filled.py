"""A card answers every phase and site exactly once."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from itertools import product

from builder.check.evidence import Evidence, Finding, content_file
from builder.diagnostic import Level
from builder.model.card import PHASES, SITES
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "A card has to answer for every phase and every site, once. An empty place would leave a "
    "client's question without an answer."
)
BAD = Example(
    "cards/wet_cloth.yml",
    """
    format: 1
    id: wet_cloth
    name: Wet cloth
    kind: technique
    hands_on: false
    serves: [limit]
    what: A wet cloth, laid on.
    baseline:
      - phase: [acute, early_repair, late_repair, remodelling]
        answer: ok
        why: It cools a little.
        source: [common_practice]
        strength: common_practice
    """,
)
GOOD = Example(
    "cards/wet_cloth.yml",
    """
    format: 1
    id: wet_cloth
    name: Wet cloth
    kind: technique
    hands_on: false
    serves: [limit]
    what: A wet cloth, laid on.
    baseline:
      - phase: [acute, early_repair, late_repair, remodelling, none]
        answer: ok
        why: It cools a little.
        source: [common_practice]
        strength: common_practice
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Cells that are empty or filled twice."""
    for card in evidence.course.content.cards.values():
        filled = Counter(cell for row in card.baseline for cell in product(row.phase, row.site))
        for phase, site in product(PHASES, SITES):
            if filled[phase, site] == 1:
                continue
            state = "empty" if not filled[phase, site] else "filled twice"
            yield Finding(
                content_file(evidence, f"cards/{card.id}.yml"),
                ("baseline",),
                f"The cell {phase} x {site} of {card.name} is {state}.",
                "Give one row that covers it.",
            )
