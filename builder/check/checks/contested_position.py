"""A test may rest on a contested point only where the course states its own position."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "Where teachers disagree, a participant can be marked only by what this course says it teaches. "
    "The position is printed beside the key."
)
BAD = Example(
    "course.yml",
    """
    positions: {}
    """,
)
GOOD = Example(
    "course.yml",
    """
    positions:
      cold_heals: Cold is taught here for pain alone.
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Visits in a test pool whose chosen option rests on a contested point without a position."""
    pool = {name for test in evidence.course.file.tests for name in test.cases}
    positions = evidence.course.file.positions
    for case, index, _, judged in evidence.visits():
        if case.id not in pool:
            continue
        for number, option in enumerate(judged.chosen):
            for rule in option.rules:
                if rule.contested is None or rule.contested.point in positions:
                    continue
                yield Finding(
                    case_file(case),
                    ("visits", index, "chosen", number),
                    f"This test question rests on a contested point ({rule.contested.point}).",
                    f"State the course's position under `positions: {rule.contested.point}:` in course.yml.",
                    (rule.id,),
                )
