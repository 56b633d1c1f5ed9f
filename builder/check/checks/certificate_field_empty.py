"""What a board wants on the certificate is filled in by the course."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.course import CourseFile
from builder.model.kind import Example
from builder.model.sample_board import sample_board

LEVEL: Level = "warning"
WHY = "A certificate without a field that the board asks for is sent back, after the class has gone home."
BAD = Example(
    "course.yml", 'boards: [guild]\nnumber: ""', more=(sample_board("certificate: [name, course number]"),)
)
GOOD = Example(
    "course.yml",
    "boards: [guild]\nnumber: LF-CE-02",
    more=(sample_board("certificate: [name, course number]"),),
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Fields of a board's certificate that the course leaves empty, told board by board."""
    file, boards = evidence.course.file, evidence.course.content.boards
    empty = [name for name, text in _given(file).items() if not text.strip()]
    for index, name in enumerate(file.boards):
        missing = [one for one in empty if name in boards and one in boards[name].certificate]
        if missing:
            listed = ", ".join(f"`{one}`" for one in missing)
            yield Finding(
                "course.yml",
                ("boards", index),
                f"{boards[name].name} asks for what the certificate would leave empty: {listed}.",
                "Fill in `number` of the course, or `number` of the provider.",
            )


def _given(file: CourseFile) -> dict[str, str]:
    """What of a certificate an author may leave empty."""
    return {"course number": file.number, "provider number": file.provider.number}
