"""A case that a lesson places has a page: it stands in a practice set."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.lesson import lesson_tags

LEVEL: Level = "error"
WHY = "The tag becomes a link to the page of the case. Only cases of a practice set have a page."
BAD = Example(
    "lessons/cold.md",
    "# Cold\n\n[card cold_pack]\n\n[case fair]\n",
    more=(Example("course.yml", "practice:\n  - {id: first, title: First cases, cases: [fence]}\n"),),
)
GOOD = Example("lessons/cold.md", "# Cold\n\n[card cold_pack]\n\n[case fair]\n")


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every tag of a case that is neither practised nor, which is said elsewhere, in the pool of a test."""
    course = evidence.course
    listed = {name for one in course.file.practice for name in one.cases}
    listed |= {name for one in course.file.tests for name in one.cases}
    for stem, text in course.lessons.items():
        for tag in lesson_tags(text):
            if tag.kind == "case" and tag.name in course.cases and tag.name not in listed:
                yield Finding(
                    f"lessons/{stem}.md",
                    (),
                    f"The case `{tag.name}` has no page: it is in no practice set.",
                    "Add it to a practice set in `course.yml`, or take the tag out.",
                    line=tag.line,
                )
