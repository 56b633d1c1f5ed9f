"""Papers, and that nothing in them comes from where it may not."""

import hashlib
import json
from base64 import b32encode

import pytest

from builder.assess.papers import papers_and_keys, pool_of
from builder.model.library import Course
from builder.model.paper import Paper, PublishedTest
from tests.assess.sample import SECRET, a_test, case, course, judged, visit

CASES = [case("alpha"), case("beta")]
ALL_TOPICS = [{"objective": "choose", "topic": one, "count": 1} for one in ("session", "option", "phase")]


def made(of: Course, secret: bytes = SECRET) -> PublishedTest:
    """The one test of a course."""
    ((published, _),) = papers_and_keys(of, judged(list(of.cases.values())), secret)
    return published


def with_plan(**changed: object) -> Course:
    """A course whose test asks a session, an option and a phase."""
    return course(CASES, tests=[a_test(["alpha", "beta"], plan=ALL_TOPICS, **changed)])


def first_of(published: PublishedTest) -> Paper:
    """Version A."""
    return published.papers[0]


def test_there_is_a_paper_for_every_version() -> None:
    """Papers carry the test, its versions by letter, and what the plan asks."""
    papers = made(with_plan(versions=3)).papers
    assert [one.version for one in papers] == ["A", "B", "C"]
    assert {len(one.questions) for one in papers} == {3}
    assert {one.language for one in papers} == {"en"}


def test_the_edition_is_worked_out_from_the_papers_alone() -> None:
    """First eight of lower-case base32 of SHA-256 over the papers as canonical JSON."""
    published = made(with_plan())
    papers = json.loads(published.model_dump_json())["papers"]
    text = json.dumps(papers, sort_keys=True, ensure_ascii=False, separators=(",", ":"))
    assert published.edition == b32encode(hashlib.sha256(text.encode()).digest()).decode()[:8].lower()


@pytest.mark.parametrize(
    "hidden",
    [
        "alpha/",
        "beta/",
        "v1",
        "v2",
        "Secret",
        "because",
        "rule_",
        "Why",
        '"cold"',
        '"rub"',
        '"wrap"',
        "OK as",
    ],
)
def test_a_paper_holds_nothing_that_is_ours(hidden: str) -> None:
    """No id of case, visit, card or rule, no title, no word of the author's, no reason."""
    assert hidden not in made(with_plan(versions=6)).model_dump_json()


def test_a_question_shows_its_own_visit_only() -> None:
    """The scene of each question tells one visit, with what happened first."""
    for question in first_of(made(with_plan())).questions:
        assert question.scene is not None
        assert question.scene.story.count("It hurts, day") == 1


def test_another_secret_gives_other_ids_and_the_same_words() -> None:
    """The secret decides ids and orders; the text is the same."""
    one, other = (first_of(made(with_plan(), secret)) for secret in (SECRET, SECRET[::-1]))
    assert {question.id for question in one.questions}.isdisjoint(question.id for question in other.questions)
    assert sorted(question.stem for question in one.questions) == sorted(
        question.stem for question in other.questions
    )


def test_the_authors_order_leaves_no_trace() -> None:
    """Options written in another order, one of them moved from wrong to chosen: the same paper."""
    turned = visit(
        1, chosen=[{"card": "wrap", "site": "remote"}], wrong=[{"card": "rub"}, *visit(1)["chosen"]]
    )
    one, other = (
        course([case("alpha", visits=[written])], tests=[a_test(["alpha"])]) for written in (visit(1), turned)
    )
    assert made(one) == made(other)


def test_the_order_of_questions_is_that_of_their_ids() -> None:
    """Neither the plan's order nor the author's shows in a paper."""
    for paper in made(with_plan(versions=6)).papers:
        ids = [question.id for question in paper.questions]
        assert ids == sorted(ids)


def test_a_case_named_twice_is_asked_once() -> None:
    """The pool holds every question once."""
    doubled = course(CASES, tests=[a_test(["alpha", "alpha", "beta"])])
    pool = pool_of(doubled, doubled.file.tests[0], judged(CASES))
    assert len({one.shown.identity for one in pool}) == len(pool) == 16
