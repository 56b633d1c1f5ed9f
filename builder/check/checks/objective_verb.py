"""An objective begins with something a participant does that somebody else can see."""

from __future__ import annotations

import re
from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "warning"
WHY = (
    "Approving bodies send objectives back that say understand or know: nobody can see whether they were "
    "met, and no question can ask for them."
)
BAD = Example(
    "course.yml", "objectives:\n  - {id: choose, text: Understand every phase from a written case.}"
)
GOOD = Example("course.yml", "objectives:\n  - {id: choose, text: Name every phase from a written case.}")
# Common practice of approving bodies; the list is our own, and English.
UNSEEN = (
    "understand", "know", "learn", "appreciate", "explore", "grasp", "realise", "realize", "believe", "enjoy",
    "be familiar", "become familiar", "be aware", "become aware", "be exposed", "gain",
)  # fmt: skip
_UNSEEN = re.compile(rf"(?:^|[,;:]\s+|\band\s+|\bto\s+)({'|'.join(UNSEEN)})\b", re.IGNORECASE)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Objectives whose verb cannot be seen; a course in another language is left alone."""
    if not evidence.course.file.language.startswith("en"):
        return
    for index, one in enumerate(evidence.course.file.objectives):
        if found := _UNSEEN.search(one.text):
            yield Finding(
                "course.yml",
                ("objectives", index, "text"),
                f"Nobody can see whether a participant does this: `{found[1].lower()}`.",
                "Say what they do: name, choose, show, explain, perform, decide.",
            )
