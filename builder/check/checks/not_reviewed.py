"""What no clinician has reviewed is counted, part by part, so that nobody forgets it."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.reviewable import unsigned, unsigned_words

LEVEL: Level = "advice"
WHY = (
    "A rule that no clinician has read is one person's draft, and every page says so until somebody "
    "with a licence has signed it."
)
BAD = Example(
    "reviews.yml",
    """
    format: 1
    rules: {}
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


def check(evidence: Evidence) -> Iterator[Finding]:
    """How much of each part of this course's content is not yet reviewed."""
    counted = unsigned(evidence.course.content)
    if counted:
        yield Finding(
            "course.yml",
            (),
            f"Not yet reviewed by a clinician: {unsigned_words(counted)}. "
            "Every page that rests on them says so.",
            "Let a clinician go through the list of `explain COURSE reviews`; sign in `reviews.yml`.",
        )
