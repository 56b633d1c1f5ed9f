"""Pages laid out in shares are the pages that the sites are planned with."""

import pickle
from pathlib import Path

import pytest

from builder.assess.papers import papers_and_keys
from builder.flow import shares
from builder.flow.crew import Crew
from builder.flow.fingerprints import fingerprints
from builder.flow.opened import open_course
from builder.flow.shares import laid_out
from builder.flow.sides import Planner, Record, instructor_to_build, student_to_build
from builder.flow.sides import Tests as TheTests
from tests.demo.small import small

NOTHING = Record(), Record()


def planner() -> Planner:
    """A planner of the small course, of which no case has been told yet."""
    opened = open_course(small())
    assert opened.course is not None
    drawn = papers_and_keys(opened.course, opened.judged, b"a secret of these tests")
    tests = TheTests(tuple(one for one, _ in drawn), tuple(ring for _, ring in drawn))
    return Planner(opened.course, opened.judged, fingerprints(opened.course), tests)


def test_few_cases_are_not_shared_out() -> None:
    """Nothing is laid out before it is asked for."""
    made = planner()
    assert len(list(made.missing(*NOTHING))) == len(made.course.cases) <= shares.FEW
    assert laid_out(Crew(1), made, *NOTHING) == shares.Both()


@pytest.mark.parametrize("helpers", [0, 1])
def test_both_sites_are_the_same(helpers: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """With pages from shares, here or from elsewhere, every page of both plans is as without."""
    monkeypatch.setattr(shares, "FEW", 2)
    monkeypatch.setattr(shares, "LEAST", 3)
    made, alone = planner(), planner()
    with Crew(helpers) as crew:
        fresh = laid_out(crew, made, *NOTHING)
    old, one, other = tmp_path / "old", tmp_path / "one", tmp_path / "other"
    student = student_to_build(made, Record(), old, one, fresh.student)
    assert student.plan == student_to_build(alone, Record(), old, other).plan
    instructor = instructor_to_build(made, Record(), old, one, fresh.instructor)
    assert instructor.plan == instructor_to_build(alone, Record(), old, other).plan
    assert set(fresh.student) < {page.address for page in student.plan.pages}


def test_a_share_is_small_and_plain() -> None:
    """It holds its own cases and the content, and can be sent to another process."""
    made = planner()
    name = next(iter(made.course.cases))
    part = made.judged.part([name])  # type: ignore[attr-defined]
    again = pickle.loads(pickle.dumps(part))  # noqa: S301 - our own
    assert list(again.course.cases) == list(again.told()) == [name]
    assert again.told()[name] == made.judged[name]
