"""Nothing that a new file only begins with is left as it was: `Write here ...`."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "advice"
WHY = (
    "A new file says “Write here” where only you know what is true. As long as it does, participants read "
    "that on the page."
)
BAD = Example("lessons/cold.md", "# Cold\n\nWrite here what this page is for.\n\n[card cold_pack]\n")
GOOD = Example("lessons/cold.md", "# Cold\n\nCold eases pain for a short time.\n\n[card cold_pack]\n")
SHOWN = 8
_UNWRITTEN = re.compile(r"^(?P<before>[^#]*?)\bWrite here\b")
_IN_LESSON = re.compile(r"^(?P<before>.*?)\bWrite here\b")
_NOTE = re.compile(r"<!--.*?-->", re.DOTALL)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every file of the course in which something is still to be written, with its lines."""
    for file, places in evidence.course.places.items():
        if file.startswith("content/"):
            continue
        if found := list(_found(file, places.lines)):
            line, column = found[0]
            count = f"{len(found)} texts are" if len(found) > 1 else "One text is"
            message = f"{count} still to be written: {_listed(found)}."
            yield Finding(file, (), message, "Put your own words there.", line=line, column=column)


def _found(file: str, lines: Sequence[str]) -> Iterator[tuple[int, int]]:
    """Line and column of each place, both from 1."""
    lesson = file.endswith(".md")
    if lesson:
        lines = _NOTE.sub(lambda note: "\n" * note[0].count("\n"), "\n".join(lines)).split("\n")
    pattern = _IN_LESSON if lesson else _UNWRITTEN
    for number, line in enumerate(lines, start=1):
        if said := pattern.match(line):
            yield number, len(said["before"]) + 1


def _listed(found: Sequence[tuple[int, int]]) -> str:
    numbers = [str(line) for line, _ in found]
    more = len(numbers) - SHOWN
    shown = numbers if more <= 1 else [*numbers[:SHOWN], f"and {more} more"]
    return f"{'lines' if len(numbers) > 1 else 'line'} {', '.join(shown)}"
