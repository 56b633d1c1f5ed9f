"""Tests: papers from what may be seen alone, keys joined to them afterwards."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from builder.assess.keys import key_ring
from builder.assess.laying import Laid, laid_out
from builder.assess.opaque import Opaque, canonical, edition_of
from builder.assess.question import Question, Shown
from builder.assess.questions import questions_of
from builder.assess.versions import Slot, Version, drawn_versions
from builder.assess.written import written_question
from builder.model.judgement import VisitJudgement
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.paper import Paper, PublishedTest
from builder.model.plan import CourseTest


@dataclass(frozen=True)
class DrawnTest:
    """A published test, with the version and layout behind each of its papers."""

    published: PublishedTest
    versions: tuple[Version, ...]
    laid: tuple[dict[Slot, Laid], ...]


def papers_and_keys(
    course: Course, judged: Mapping[str, tuple[VisitJudgement, ...]], secret: bytes
) -> list[tuple[PublishedTest, KeyRing]]:
    """Every test of a course with its key ring; the secret of at least 16 bytes names what is published."""
    made = []
    for test in course.file.tests:
        pool = pool_of(course, test, judged)
        drawn = drawn_test(course, test, [one.shown for one in pool], secret)
        made.append((drawn.published, key_ring(test, drawn.published, drawn.versions, drawn.laid, pool)))
    return made


def pool_of(
    course: Course, test: CourseTest, judged: Mapping[str, tuple[VisitJudgement, ...]]
) -> tuple[Question, ...]:
    """Every question that the cases of a test yield, and those its author wrote, each once."""
    cases = [course.cases[name] for name in dict.fromkeys(test.cases)]
    visits = (visit for case in cases for visit in questions_of(course, case, judged[case.id], alone=True))
    every = [one for visit in visits for one in visit]
    every += [written_question(course, course.questions[name]) for name in test.questions]
    return tuple({one.shown.identity: one for one in every}.values())


def drawn_test(course: Course, test: CourseTest, shown: Sequence[Shown], secret: bytes) -> DrawnTest:
    """A test from what may be seen of its pool; that is all it is given."""
    versions = versions_of(course, test, shown)
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


def versions_of(course: Course, test: CourseTest, shown: Sequence[Shown]) -> tuple[Version, ...]:
    """The versions of a test as drawn from what may be seen of its pool."""
    objectives = {name: course.cases[name].objectives for name in test.cases}
    objectives |= {f"questions/{name}": (course.questions[name].objective,) for name in test.questions}
    return tuple(drawn_versions(test, shown, objectives))


def _laid_version(test: CourseTest, version: Version, secret: bytes) -> dict[Slot, Laid]:
    slots = sorted(version.drawn)
    laid = laid_out([version.drawn[slot] for slot in slots], Opaque(secret, f"{test.id}|{version.name}"))
    return dict(zip(slots, laid, strict=True))
