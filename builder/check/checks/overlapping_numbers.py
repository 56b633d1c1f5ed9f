"""Two options should not share a value."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import asked
from builder.check.wording.numbers import span_of
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.place import Path

LEVEL: Level = "advice"
WHY = "Where a value lies in two options, both are right for it, and nobody can know which one is meant."
BAD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: 1 to 20 minutes, right: yes, because: The skin is looked at after that.}
        - {text: 20 to 60 minutes, because: The skin may freeze.}
        - {text: 60 to 90 minutes, because: The skin may freeze.}
    """,
)
GOOD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: 1 to 20 minutes, right: yes, because: The skin is looked at after that.}
        - {text: 30 to 60 minutes, because: The skin may freeze.}
        - {text: 70 to 90 minutes, because: The skin may freeze.}
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Options that overlap one before them, told at the later one."""
    for _, question in asked(evidence):
        spans = [(one, span) for one in question.options if (span := span_of(one.text)) is not None]
        told: dict[Path, tuple[str, str]] = {}
        for (one, span), (other, later) in combinations(spans, 2):
            if span.meets(later):
                told.setdefault(other.path, (one.text, other.text))
        for path, (first, second) in told.items():
            message = f"“{first}” and “{second}” share a value."
            yield Finding(
                question.file, path, message, "Let one end before the next begins: 1 to 5, 6 to 10."
            )
