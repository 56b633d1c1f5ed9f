"""A card answers every phase and site exactly once."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from itertools import product

from builder.check.evidence import Evidence, Finding, content_file
from builder.diagnostic import Level
from builder.model.card import PHASES, SITES

LEVEL: Level = "error"


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
