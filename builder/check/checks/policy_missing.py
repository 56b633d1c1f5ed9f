"""Every policy that an approving body asks for is written."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.sample_board import sample_board

LEVEL: Level = "warning"
WHY = (
    "Boards ask that participants can read certain policies beforehand, and look for each in the application."
)
BAD = Example("course.yml", "boards: [guild]", more=(sample_board("policies: [refund]"),))
GOOD = Example(
    "course.yml",
    "boards: [guild]\npolicies: {refund: Paid back within 14 days.}",
    more=(sample_board("policies: [refund]"),),
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Policies that a board of the course asks for and the course does not have, told board by board."""
    file, boards = evidence.course.file, evidence.course.content.boards
    for index, name in enumerate(file.boards):
        missing = [one for one in boards[name].policies if one not in file.policies] if name in boards else []
        if missing:
            listed = ", ".join(f"`{one}`" for one in missing)
            yield Finding(
                "course.yml",
                ("boards", index),
                f"{boards[name].name} asks for policies that are not written: {listed}.",
                "Write a sentence for each under `policies`.",
            )
