"""Pools in which one answer is right so often that a guess at it passes for knowledge."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from fractions import Fraction

from builder.assess.question import Question
from builder.diagnostic import Diagnostic
from builder.model.exact import percent
from builder.model.kind import Kind, kind
from builder.model.library import Course
from builder.model.plan import CourseTest, QuestionTopic
from builder.place import Place, Places, Step

FILE = "course.yml"
SAME_ANSWERS: tuple[QuestionTopic, ...] = ("session", "phase")
FEWEST = 4  # own default: with fewer questions nothing can be told
MOST = 2  # own default: more than twice as often as by chance
_TEST = """
tests:
  - id: final
    title: Final test
    cases: [thigh, fair]
    plan:
      - {objective: choose, topic: %s, count: 1}
    seed: little
    pass_mark: 75 %%
practice:
  - {id: first, title: First cases, cases: [fence]}
"""
KINDS: tuple[Kind, ...] = (
    kind(
        "pool_one_sided",
        "Who always says “go on” passes a test in which that is nearly always right. The draw cannot even it "
        "out, since it must not know what is right.",
        FILE,
        bad=_TEST % "session",
        good=_TEST % "option",
        level="advice",
    ),
)


def one_sided(
    course: Course, number: int, test: CourseTest, pool: Sequence[Question]
) -> Iterator[Diagnostic]:
    """Topics of the plan that always offer the same answers, where one of them is right too often."""
    asked = {row.topic for row in test.plan}
    for topic in SAME_ANSWERS:
        about = [one for one in pool if one.shown.topic == topic and topic in asked]
        if len(about) < FEWEST:
            continue
        right = Counter(one.shown.options[one.judged.right[0]].title for one in about)
        answer, count = right.most_common(1)[0]
        if Fraction(count, len(about)) > Fraction(MOST, len(about[0].shown.options)):
            path: tuple[Step, ...] = ("tests", number, "cases")
            yield Diagnostic(
                "pool_one_sided",
                "advice",
                course.places.get(FILE, Places(Place(FILE))).of(path),
                f"“{answer}” is right in {count} of the {len(about)} questions on {topic} that this pool "
                f"yields: a guess at it gets {percent(Fraction(count, len(about)))}.",
                "Take cases with that answer out of the pool, or add some with others.",
                path,
            )
