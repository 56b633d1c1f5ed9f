"""An author-written question is shown where a lesson places it, or asked where a test draws it."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.lesson import lesson_tags

LEVEL: Level = "advice"
WHY = "Nothing is lost, but a question in the folder is neither practised nor asked until it has its place."
BAD = Example("questions/cold_time.yml", "stem: What eases a knee that was hit an hour ago?")
GOOD = Example("lessons/cold.md", "# Cold\n\n[card cold_pack]\n\n[question cold_time]\n")


def check(evidence: Evidence) -> Iterator[Finding]:
    """How many questions no lesson places and no test draws from, where there are any."""
    tags = [tag for text in evidence.course.lessons.values() for tag in lesson_tags(text)]
    placed = {tag.name for tag in tags if tag.kind == "question"}
    placed |= {name for test in evidence.course.file.tests for name in test.questions}
    if count := len(evidence.course.questions.keys() - placed):
        what = "question is" if count == 1 else "questions are"
        yield Finding(
            "questions/",
            (),
            f"{count} author-written {what} read and checked, but no page or paper shows them.",
            "Nothing is lost. A line such as `[question name]` in a lesson shows one for practice; a test "
            "asks those in its list `questions`.",
        )
