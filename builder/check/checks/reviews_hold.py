"""A signature in `reviews.yml` is for a part of the content that is there, and for what it says now."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.review import Reviewable, Signed, fingerprint
from builder.model.reviewable import reviewable

LEVEL: Level = "warning"
WHY = (
    "A signature is for the words that were read. When a rule or a card has changed since, nobody "
    "has answered for what it says now."
)
BAD = Example(
    "reviews.yml",
    """
    format: 1
    rules:
      fever_today: {who: Oda Brandvold, licence: Physiotherapist 00417, date: 2026-11-20, fingerprint: "0"}
    """,
)
GOOD = Example(
    "reviews.yml",
    """
    format: 1
    rules:
      fever_today: {who: Oda Brandvold, licence: Physio 00417, date: 2026-11-20, fingerprint: cbb64d8cf8be}
    """,
)
FILE = "reviews.yml"


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every signature that is void."""
    book = evidence.course.reviews
    if book is not None:
        for part, known in reviewable(evidence.course.content).items():
            yield from _void(part, getattr(book, part), known)


def _void(part: str, signed: Mapping[str, Signed], known: Mapping[str, Reviewable]) -> Iterator[Finding]:
    for name, one in signed.items():
        noun = known.get(name)
        if noun is None:
            message = f"There is nothing `{name}` under `{part}` to be reviewed."
            remedy = "Write its id as the list of `explain COURSE reviews` shows it."
            yield Finding(FILE, (part, name), message, remedy)
        elif not one.holds_for(noun):
            message = f"`{name}` under `{part}` has changed since it was signed: the signature is void."
            remedy = f"Let a clinician read it again; its fingerprint now is {fingerprint(noun)}."
            yield Finding(FILE, (part, name, "fingerprint"), message, remedy)
