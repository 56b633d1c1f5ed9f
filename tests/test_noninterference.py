"""Nothing published depends on a key: two worlds that differ in what is right publish the same bytes."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.assess import papers
from builder.assess.papers import papers_and_keys
from builder.assess.question import Judged, Question
from builder.check.leaks import find_leaks
from builder.flow import build as building
from builder.flow import sides
from builder.flow.opened import Opened
from builder.model.key import KeyAnswer, KeyRing
from builder.model.keyed import KeyedParts
from builder.model.library import Course
from builder.model.paper import PublishedTest
from builder.model.question import QUESTION_KINDS
from builder.render.student import student_site
from tests.assess.sample import SECRET, judged
from tests.check.leak.site import CASES, COURSE
from tests.demo.built import COURSE as DEMONSTRATION
from tests.demo.built import demo
from tests.demo.built import opened as opened_demonstration
from tests.demo.small import made_small, small
from tests.planted import (
    OF_KINDS,
    PLANTS,
    Plant,
    Turn,
    as_judged,
    differing,
    files_in,
    site_of,
    turn_judgements,
    turned,
)

BY_NAME = [pytest.param(plant, id=plant.name) for plant in PLANTS]
SEARCHED = [pytest.param(plant, id=plant.name) for plant in PLANTS if plant.searched]


@pytest.fixture(scope="module")
def opened() -> Opened:
    """The shipped course, read, judged and checked."""
    return opened_demonstration()


@pytest.fixture(scope="module")
def smaller(opened: Opened) -> Opened:
    """The shipped course with fewer cases: enough to plant a leak in."""
    return made_small(opened)


def made(turn: Turn) -> tuple[PublishedTest, KeyRing]:
    """The one test of the sample course in a world."""
    with pytest.MonkeyPatch.context() as patch:
        turn_judgements(patch, COURSE, turn)
        (one,) = papers_and_keys(COURSE, judged(CASES), SECRET)
    return one


def course_of(opened: Opened) -> Course:
    """The course that was opened."""
    assert opened.course is not None
    return opened.course


@given(st.data())
def test_papers_are_the_same_whatever_is_right(data: st.DataObject) -> None:
    """For any choice of right options and any reasons: the same papers byte for byte, under another key."""

    def anew(question: Question) -> Question:
        if question.shown.kind not in ("one", "many"):
            return turned(question) if data.draw(st.booleans()) else question
        places = st.integers(0, len(question.shown.options) - 1)
        right = data.draw(st.sets(places, min_size=1))
        said = tuple(data.draw(st.permutations(question.judged.said)))
        return Question(question.shown, Judged(tuple(sorted(right)), said))

    (published, ring), (other, other_ring) = made(as_judged), made(anew)
    assert published.model_dump_json() == other.model_dump_json()
    assert ring.edition == other_ring.edition
    assert (ring.keys == other_ring.keys) == (ring.key_edition == other_ring.key_edition)


def test_the_turned_world_has_another_key() -> None:
    """The two worlds compared here do differ: no question keeps what is right, or its reasons."""
    ring, other = made(as_judged)[1], made(turned)[1]
    for key, key_of_other in zip(ring.keys, other.keys, strict=True):
        for one, another in zip(key.answers, key_of_other.answers, strict=True):
            assert one.question == another.question
            assert KeyedParts(**held(one)) != KeyedParts(**held(another))
            assert one.reasons != another.reasons or one.kind == "text"


def held(answer: KeyAnswer) -> dict[str, Any]:
    """What a key holds right, without its reasons."""
    return {name: getattr(answer, name) for name in KeyedParts.model_fields}


def test_every_kind_of_question_is_among_those_compared() -> None:
    """The sample test asks by every kind, so none of the laws here passes one over."""
    published, ring = made(as_judged)
    for paper, key in zip(published.papers, ring.keys, strict=True):
        assert {one.kind for one in paper.questions} == set(QUESTION_KINDS)
        assert {one.kind for one in key.answers} == set(QUESTION_KINDS)


@pytest.mark.parametrize("kind", OF_KINDS)
def test_a_leak_of_a_kind_makes_the_papers_differ(kind: str) -> None:
    """Steps shown as they are right, partners of none told apart, a bound in the hint, votes shown."""

    def leaky(turn: Turn) -> Turn:
        return lambda question: OF_KINDS[kind](turn(question)) if question.shown.kind == kind else question

    assert made(leaky(as_judged))[0] != made(leaky(turned))[0]


def test_not_one_byte_of_the_site_depends_on_a_key(opened: Opened, tmp_path: Path) -> None:
    """The finished student site of the shipped course is the same in both worlds, and holds no leak."""
    files, rings = site_of(opened, tmp_path / "one", as_judged)
    others, other_rings = site_of(opened, tmp_path / "other", turned)
    assert rings != other_rings
    assert differing(files, others) == []
    assert find_leaks(files, rings, course_of(opened)) == []
    assert find_leaks(others, other_rings, course_of(opened)) == []


@pytest.mark.parametrize("plant", BY_NAME)
def test_a_planted_leak_makes_the_worlds_differ(plant: Plant, smaller: Opened, tmp_path: Path) -> None:
    """Each kind of leak, planted on purpose, changes some published byte; so the test above can fail."""
    files, _ = site_of(smaller, tmp_path / "one", as_judged, plant)
    others, _ = site_of(smaller, tmp_path / "other", turned, plant)
    assert differing(files, others)


@pytest.mark.parametrize("plant", SEARCHED)
def test_a_planted_leak_is_found_in_a_single_site(plant: Plant, smaller: Opened, tmp_path: Path) -> None:
    """What can be seen without a second world is also found by the search that every build runs."""
    files, rings = site_of(smaller, tmp_path / "one", as_judged, plant)
    assert find_leaks(files, rings, plant.course(course_of(smaller)))


def test_it_is_the_planting_that_makes_the_difference(smaller: Opened, tmp_path: Path) -> None:
    """The course that leaks are planted in differs in nothing and holds no leak as long as none is."""
    files, rings = site_of(smaller, tmp_path / "one", as_judged)
    others, _ = site_of(smaller, tmp_path / "other", turned)
    assert differing(files, others) == []
    assert find_leaks(files, rings, course_of(smaller)) == []


def test_the_whole_build_publishes_the_same_bytes(opened: Opened, tmp_path: Path) -> None:
    """`build` itself, both sites and all: `publish/` is the same, `private/` is not."""
    one, other = demo()[0], tmp_path / "other"
    with pytest.MonkeyPatch.context() as patch:
        turn_judgements(patch, course_of(opened), turned)
        building.build(opened, DEMONSTRATION, other)
    assert differing(files_in(one / "publish"), files_in(other / "publish")) == []
    assert any(
        name.startswith("keys/") for name in differing(files_in(one / "private"), files_in(other / "private"))
    )
    assert differing(files_in(one / "private" / "papers"), files_in(other / "private" / "papers")) == []


@pytest.mark.parametrize("plant", SEARCHED[:3])
def test_the_build_refuses_to_publish_a_leak(
    plant: Plant, smaller: Opened, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With key material in its site a build ends with every place named, and publishes nothing."""
    secret = building.read_secret(small())
    rings = [ring for _, ring in papers_and_keys(course_of(smaller), smaller.judged, secret)]
    monkeypatch.setattr(sides, "student_site", lambda *given: plant.plan(student_site(*given), rings))
    with pytest.raises(building.KeyInPublished) as caught:
        building.build(smaller, small(), tmp_path / "out")
    assert caught.value.leaks
    assert not (tmp_path / "out" / "publish").exists()


def test_papers_are_made_without_judgements() -> None:
    """What draws and lays out a test is given what may be seen, and nothing else."""
    pool = papers.pool_of(COURSE, COURSE.file.tests[0], judged(CASES))
    drawn = papers.drawn_test(COURSE, COURSE.file.tests[0], [one.shown for one in pool], SECRET)
    assert drawn.published == made(as_judged)[0]
