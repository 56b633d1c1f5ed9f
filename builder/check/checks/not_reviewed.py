"""Rules and cards that no clinician has reviewed are counted, so that nobody forgets it."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level

LEVEL: Level = "advice"


def check(evidence: Evidence) -> Iterator[Finding]:
    """How many rules and cards of this course are not yet reviewed."""
    content = evidence.course.content
    rules = sum(rule.reviewed is None for rule in content.rules.values())
    cards = sum(card.reviewed is None for card in content.cards.values())
    if rules or cards:
        yield Finding(
            "course.yml",
            (),
            f"{rules} rules and {cards} cards are not yet reviewed by a clinician; every page says so.",
            "Let a clinician go through the list of `explain COURSE reviews`; sign in `reviews.yml`.",
        )
