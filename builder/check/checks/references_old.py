"""The references of a course carry a year, and old ones are known to be old."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "advice"
WHY = (
    "Boards ask for current sources. An old one may still be the best there is, but somebody should have "
    "decided so. Age is counted to the day on which the rules of the boards were read."
)
OLD_YEARS = 15  # own default
BAD = Example("course.yml", "references: [ryan1991]")
GOOD = Example("course.yml", "references: []")


def check(evidence: Evidence) -> Iterator[Finding]:
    """References without a year, and those more than fifteen years older than the boards' rules."""
    content = evidence.course.content
    read = [content.boards[name].dated.year for name in evidence.course.file.boards if name in content.boards]
    for index, name in enumerate(evidence.course.file.references):
        source = content.references.sources.get(name)
        if source is None or not read:
            continue
        if source.year is None:
            said = f"The reference `{name}` has no year."
        elif max(read) - source.year > OLD_YEARS:
            said = f"The reference `{name}` is of {source.year}, more than {OLD_YEARS} years old."
        else:
            continue
        remedy = "Set a newer one beside it, or accept it where it stands, with the reason."
        yield Finding("course.yml", ("references", index), said, remedy)
