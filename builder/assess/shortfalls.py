"""What the plan of a test asks and its pool cannot give, placed in the course file."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from builder.assess.balance import one_sided
from builder.assess.papers import pool_of, versions_of
from builder.assess.versions import Version
from builder.diagnostic import Diagnostic
from builder.model.judgement import VisitJudgement
from builder.model.kind import Kind, kind
from builder.model.library import Course
from builder.model.plan import CourseTest, PlanRow
from builder.place import Place, Places, Step

FILE = "course.yml"
_TEST = """
tests:
  - id: final
    title: Final test
    cases: [%s]
    plan:
      - {objective: choose, topic: %s, count: %s}
    seed: little
    pass_mark: 75 %%
practice:
  - {id: first, title: First cases, cases: [%s]}
"""
KINDS: tuple[Kind, ...] = (
    kind(
        "plan_not_met",
        "A test that cannot ask what its plan promises would be easier than its plan says.",
        FILE,
        bad=_TEST % ("thigh", "option", 9, "fence, fair"),
        good=_TEST % ("thigh", "option", 1, "fence, fair"),
    ),
    kind(
        "pool_is_narrow",
        "Two visits of one case in one test can tell each other's answers: what was done shows in "
        "what follows.",
        FILE,
        bad=_TEST % ("fair", "phase", 2, "fence"),
        good=_TEST % ("fair", "phase", 1, "fence"),
        level="advice",
    ),
)


def shortfalls(course: Course, judged: Mapping[str, tuple[VisitJudgement, ...]]) -> list[Diagnostic]:
    """Rows of plans that a version cannot fill, and pools so narrow that a case is asked about twice.

    A test with a case or question that could not be read is passed over: what is wrong with it comes first.
    """
    found: list[Diagnostic] = []
    for number, test in enumerate(course.file.tests):
        if not (course.cases.keys() >= set(test.cases) and course.questions.keys() >= set(test.questions)):
            continue
        pool = pool_of(course, test, judged)
        versions = versions_of(course, test, [one.shown for one in pool])
        found += one_sided(course, number, test, pool)
        found += _rows_not_met(course, number, test, versions)
        found += _cases_asked_twice(course, number, versions)
    return found


def _rows_not_met(
    course: Course, number: int, test: CourseTest, versions: tuple[Version, ...]
) -> Iterator[Diagnostic]:
    for version in versions:
        for index, lacking in version.lacking.items():
            row = test.plan[index]
            path: tuple[Step, ...] = ("tests", number, "plan", index)
            yield Diagnostic(
                "plan_not_met",
                "error",
                _place(course, path),
                f"Version {version.name} lacks {lacking} of {row.count} {_asked_for(row)} for the "
                f"objective {row.objective}: the pool of this test does not yield them.",
                f"Ask for fewer, or add {_source_of(row)} with this objective to the pool. A version asks "
                "nothing twice, and nothing that tells the answer to another of its questions.",
                path,
            )


def _asked_for(row: PlanRow) -> str:
    kind = f" of the kind {row.kind}" if row.kind else ""
    about = "an author wrote" if row.topic == "written" else f"on {row.topic}"
    return f"questions{kind} {about}"


def _source_of(row: PlanRow) -> str:
    return "questions" if row.topic == "written" else "cases"


def _cases_asked_twice(course: Course, number: int, versions: tuple[Version, ...]) -> Iterator[Diagnostic]:
    visits: dict[tuple[str, str], set[str]] = {}
    for version in versions:
        for one in version.drawn.values():
            visits.setdefault((version.name, one.origin), set()).add(one.visit)
    for case in sorted({case for (_, case), seen in visits.items() if len(seen) > 1}):
        path: tuple[Step, ...] = ("tests", number, "cases")
        yield Diagnostic(
            "pool_is_narrow",
            "advice",
            _place(course, path),
            f"A version of this test asks about several visits of the case {case}.",
            "See that a later visit does not tell what was right on an earlier one, or widen the pool.",
            path,
        )


def _place(course: Course, path: tuple[Step, ...]) -> Place:
    return course.places.get(FILE, Places(Place(FILE))).of(path)
