"""A signature in `reviews.yml` is for a rule or card that is there, and for what it says now."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.card import Card
from builder.model.review import Signed, fingerprint
from builder.model.rule import Rule

LEVEL: Level = "warning"
FILE = "reviews.yml"


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every signature that is void."""
    book, content = evidence.course.reviews, evidence.course.content
    if book is not None:
        yield from _void("rules", "rule", book.rules, content.rules)
        yield from _void("cards", "card", book.cards, content.cards)


def _void(
    part: str, what: str, signed: Mapping[str, Signed], known: Mapping[str, Rule] | Mapping[str, Card]
) -> Iterator[Finding]:
    for name, one in signed.items():
        noun = known.get(name)
        if noun is None:
            remedy = "Write its id as the list of `explain COURSE reviews` shows it."
            yield Finding(FILE, (part, name), f"There is no {what} `{name}` to be reviewed.", remedy)
        elif not one.holds_for(noun):
            message = f"The {what} `{name}` has changed since it was signed: the signature is void."
            remedy = f"Let a clinician read it again; its fingerprint now is {fingerprint(noun)}."
            yield Finding(FILE, (part, name, "fingerprint"), message, remedy)
