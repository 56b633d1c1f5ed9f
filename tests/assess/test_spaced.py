"""What to come back to after the course."""

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from builder.assess.spaced import CASES, QUESTIONS, spaced_sets
from builder.model.after import INTERVALS
from builder.model.library import Course
from tests.assess.sample import case, course
from tests.demo.built import opened

DRAWN = [("c5", "c6", "c0"), ("c2", "c1", "c4"), ("c3", "c5", "c6"), ("c0", "c2", "c1")]


def practised(count: int) -> Course:
    """A course with so many practice cases, and one that is tested although a set holds it."""
    cases = [case(f"c{n}") for n in range(count + 1)]
    names = [one.id for one in cases]
    made = course(cases, practice=[{"id": "one", "title": "One", "cases": names}] if names else [])
    tests = [one.model_copy(update={"cases": (names[-1],)}) for one in made.file.tests[:1]]
    return replace(made, file=made.file.model_copy(update={"tests": tuple(tests)}))


@given(st.integers(0, 20))
def test_sets_hold_what_there_is_and_nothing_twice(count: int) -> None:
    """As many as are wanted or as there are; no case comes back before all have been there."""
    sets = spaced_sets(practised(count))
    assert [len(one.cases) for one in sets] == [min(CASES, count)] * (len(INTERVALS) if count else 0)
    drawn = [name for one in sets for name in one.cases]
    assert all(len({*one.cases}) == len(one.cases) for one in sets)
    assert f"c{count}" not in drawn
    first = drawn[: count // CASES * CASES]
    assert len({*first}) == len(first)


def test_the_draw_is_the_same_for_ever() -> None:
    """Written down: a course that is built again, by whatever version, leads back to the same cases."""
    assert [one.cases for one in spaced_sets(practised(7))] == DRAWN


def test_nothing_that_is_tested_is_ever_in_a_set() -> None:
    """Neither a case of a pool nor a question that is kept for a test; every objective comes back."""
    made = opened().course
    assert made is not None
    sets = spaced_sets(made)
    tested = {name for one in made.file.tests for name in (*one.cases, *one.questions)}
    shown = {name for one in sets for name in (*one.cases, *one.questions)}
    assert not shown & tested
    assert all(made.questions[name].use == "practice" for one in sets for name in one.questions)
    assert all(len(one.questions) == QUESTIONS for one in sets)
    for one in sets:
        served = {objective for name in one.cases for objective in made.cases[name].objectives}
        assert {"phase", "choose", "refer"} <= served
