"""A question that is kept for a test may be placed in no lesson."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.lesson import lesson_tags

LEVEL: Level = "error"
WHY = "In a lesson a question stands with its answer and reasons. A question of a test is shown nowhere else."
BAD = Example(
    "lessons/cold.md",
    "# Cold\n\n[card cold_pack]\n\n[question cold_time]\n",
    more=(Example("questions/cold_time.yml", "use: test"),),
)
GOOD = Example(
    "lessons/cold.md",
    "# Cold\n\n[card cold_pack]\n\n[question cold_time]\n",
    more=(Example("questions/cold_time.yml", "use: practice"),),
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every tag of a question whose use is a test."""
    for stem, text in evidence.course.lessons.items():
        for tag in lesson_tags(text):
            question = evidence.course.questions.get(tag.name) if tag.kind == "question" else None
            if question is not None and question.use == "test":
                yield Finding(
                    f"lessons/{stem}.md",
                    (),
                    f"The question `{tag.name}` is for a test and is shown here with its answer.",
                    "Place a practice question, or write `use: practice` in this one.",
                    line=tag.line,
                )
