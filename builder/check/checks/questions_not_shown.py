"""Author-written questions are read and checked, but no page or paper shows them yet."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "advice"
WHY = "Nothing is lost, but a question in the folder is neither practised nor asked until it has its place."
BAD = Example("questions/cold_time.yml", "stem: What eases a knee that was hit an hour ago?")
GOOD = Example("questions/cold_time.yml")


def check(evidence: Evidence) -> Iterator[Finding]:
    """How many questions are read, where there are any."""
    if count := len(evidence.course.questions):
        what = "question is" if count == 1 else "questions are"
        yield Finding(
            "questions/",
            (),
            f"{count} author-written {what} read and checked, but no page or paper shows them yet.",
            "Nothing is lost; they are only not used yet.",
        )
