"""A question that a test draws from is kept for a test, and says so."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = "A practice question stands in lessons with its answer. Whoever has practised it knows it in the test."
_TEST = """
tests:
  - id: final
    title: Final test
    cases: [thigh]
    questions: [cold_time]
    plan:
      - {objective: choose, topic: option, count: 1}
      - {objective: choose, topic: written, count: 1}
    seed: little
    pass_mark: 75 %
"""
BAD = Example("course.yml", _TEST, more=(Example("questions/cold_time.yml", "use: practice"),))
GOOD = Example("course.yml", _TEST, more=(Example("questions/cold_time.yml", "use: test"),))


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every question in the pool of a test that is for practice."""
    course = evidence.course
    for index, test in enumerate(course.file.tests):
        for number, name in enumerate(test.questions):
            if name in course.questions and course.questions[name].use == "practice":
                yield Finding(
                    "course.yml",
                    ("tests", index, "questions", number),
                    f"The question `{name}` is for practice, and this test draws from it.",
                    f"Write `use: test` in `questions/{name}.yml`, or take it out of this list.",
                )
