"""An objective says under what condition something is done, and how well."""

from __future__ import annotations

import re
from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "advice"
WHY = (
    "An objective has three parts: what is done, with what at hand, and how well. Without the last two an "
    "examiner and a reviewer have to guess what counts."
)
BAD = Example("course.yml", "objectives:\n  - {id: choose, text: Choose the treatment.}")
GOOD = Example(
    "course.yml",
    'objectives:\n  - {id: choose, text: "From a written case, choose, without an unsafe choice."}',
)
# Our own lists, in English: words that mostly open a condition, and words that mostly set a measure.
_CONDITION = re.compile(
    r"\b(given|from|when|with|using|after|before|during|under|by|on an?|in an?|in the|at the|in pairs)\b",
    re.IGNORECASE,
)
_CRITERION = re.compile(
    r"\b(without|within|at least|at most|no more|correctly|accurately|safely|exactly|each|every|all|none|"
    r"both|no unsafe|right in)\b|\d|%",
    re.IGNORECASE,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Objectives that name no condition or no measure; a course in another language is left alone."""
    if not evidence.course.file.language.startswith("en"):
        return
    for index, one in enumerate(evidence.course.file.objectives):
        lacks = [
            name
            for name, pattern in (("a condition", _CONDITION), ("a measure of how well", _CRITERION))
            if not pattern.search(one.text)
        ]
        if lacks:
            yield Finding(
                "course.yml",
                ("objectives", index, "text"),
                f"This objective names no {' and no '.join(one.partition(' ')[2] for one in lacks)}.",
                "Add what is at hand (`given a written case`) and how well (`without an unsafe choice`).",
            )
