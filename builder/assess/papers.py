"""Tests: papers from what may be seen alone, keys joined to them afterwards."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from builder.assess.keys import key_ring
from builder.assess.laying import Laid, laid_out
from builder.assess.opaque import Opaque, canonical, edition_of
from builder.assess.question import Question, Shown
from builder.assess.questions import questions_of
from builder.assess.versions import Slot, Version, drawn_versions
from builder.diagnostic import Diagnostic
from builder.model.course import CourseTest
from builder.model.judgement import VisitJudgement
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.paper import Paper, PublishedTest
from builder.place import Place, Places


@dataclass(frozen=True)
class DrawnTest:
    """A published test, with the version and layout behind each of its papers."""

    published: PublishedTest
    versions: tuple[Version, ...]
    laid: tuple[dict[Slot, Laid], ...]


def papers_and_keys(
    course: Course, judged: Mapping[str, tuple[VisitJudgement, ...]], secret: bytes
) -> tuple[list[tuple[PublishedTest, KeyRing]], list[Diagnostic]]:
    """Every test of a course with its key ring, and what its plan asks that the pool cannot give."""
    made: list[tuple[PublishedTest, KeyRing]] = []
    found: list[Diagnostic] = []
    for number, test in enumerate(course.file.tests):
        pool = pool_of(course, test, judged)
        drawn = drawn_test(course, test, [one.shown for one in pool], secret)
        ring = key_ring(test, drawn.published, drawn.versions, drawn.laid, pool)
        made.append((drawn.published, ring))
        found += _shortfalls(course, number, test, drawn.versions)
        found += _same_case_twice(course, number, drawn.versions)
    return made, found


def pool_of(
    course: Course, test: CourseTest, judged: Mapping[str, tuple[VisitJudgement, ...]]
) -> tuple[Question, ...]:
    """Every question that the cases of a test yield, each once."""
    cases = [course.cases[name] for name in dict.fromkeys(test.cases)]
    every = (
        one
        for case in cases
        for visit in questions_of(course, case, judged[case.id], alone=True)
        for one in visit
    )
    return tuple({one.shown.identity: one for one in every}.values())


def drawn_test(course: Course, test: CourseTest, shown: Sequence[Shown], secret: bytes) -> DrawnTest:
    """A test from what may be seen of its pool; that is all it is given."""
    objectives = {name: course.cases[name].objectives for name in test.cases}
    versions = tuple(drawn_versions(test, tuple(shown), objectives))
    laid = tuple(_laid_version(test, version, secret) for version in versions)
    papers = tuple(
        Paper(
            test=test.id,
            title=test.title,
            version=version.name,
            language=course.file.language,
            questions=tuple(sorted((one.question for one in each.values()), key=lambda one: one.id)),
        )
        for version, each in zip(versions, laid, strict=True)
    )
    edition = edition_of(canonical([one.model_dump(mode="json") for one in papers]))
    published = PublishedTest(test=test.id, title=test.title, edition=edition, papers=papers)
    return DrawnTest(published, versions, laid)


def _laid_version(test: CourseTest, version: Version, secret: bytes) -> dict[Slot, Laid]:
    slots = sorted(version.drawn)
    laid = laid_out([version.drawn[slot] for slot in slots], Opaque(secret, f"{test.id}|{version.name}"))
    return dict(zip(slots, laid, strict=True))


def _shortfalls(
    course: Course, number: int, test: CourseTest, versions: tuple[Version, ...]
) -> Iterator[Diagnostic]:
    for version in versions:
        for index, lacking in version.lacking.items():
            row = test.plan[index]
            yield Diagnostic(
                "plan_not_met",
                "error",
                _place(course, number, index),
                f"Version {version.name} lacks {lacking} of {row.count} questions on {row.topic} for the "
                f"objective {row.objective}: the pool of this test does not yield them.",
                "Ask for fewer, or add cases with this objective to the pool; a version asks nothing twice, "
                "and nothing that tells the answer to another question.",
                ("tests", number, "plan", index),
            )


def _same_case_twice(course: Course, number: int, versions: tuple[Version, ...]) -> Iterator[Diagnostic]:
    visits: dict[str, set[str]] = {}
    for version in versions:
        for one in version.drawn.values():
            visits.setdefault(f"{version.name} {one.case}", set()).add(one.visit)
    cases = dict.fromkeys(key.split()[1] for key, seen in visits.items() if len(seen) > 1)
    for case in cases:
        yield Diagnostic(
            "pool_is_narrow",
            "advice",
            _place(course, number, None),
            f"A version of this test asks about several visits of the case {case}.",
            "See that what a later visit tells does not give away what was right before, or widen the pool.",
            ("tests", number, "cases"),
        )


def _place(course: Course, number: int, row: int | None) -> Place:
    places = course.places.get("course.yml", Places(Place("course.yml")))
    step = ("cases",) if row is None else ("plan", row)
    return places.of(("tests", number, *step))
