"""Practice questions as lessons place them."""

from dataclasses import replace

import pytest

from builder.assess.placed import placed_questions
from builder.model.policy import USUAL
from builder.model.practice import PlacedQuestion
from builder.model.question import QUESTION_KINDS, AuthorQuestion
from tests.assess.sample import case, course
from tests.model.question_blocks import BLOCKS, QUESTION


def placed(*asked: AuthorQuestion) -> dict[str, PlacedQuestion]:
    """The questions of a course that has these."""
    return placed_questions(replace(course([case("alpha")]), questions={one.id: one for one in asked}))


def question(kind: str, **changed: object) -> AuthorQuestion:
    """The sound question of a kind."""
    return AuthorQuestion.model_validate({**QUESTION, kind: BLOCKS[kind], **changed})


@pytest.mark.parametrize("kind", QUESTION_KINDS)
def test_every_kind_is_placed_with_what_is_right(kind: str) -> None:
    """Under the ids that are shown, with the usual policy of its kind and its reasons."""
    one = placed(question(kind))["first_aid"]
    assert one.question.kind == one.keyed.kind == kind
    assert one.policy == USUAL[one.keyed.kind]
    assert set(one.reasons.values()) == (set() if kind == "text" else {"So it is taught."})
    assert {option.id for option in one.question.options} == set(one.keyed.options)


def test_a_question_of_a_test_is_not_placed() -> None:
    """What is kept for a test gets no answer onto a page."""
    assert placed(question("one", use="test")) == {}


@pytest.mark.parametrize("name", [f"step_{letter}" for letter in "abcdefghijkl"])
def test_an_order_is_never_shown_as_it_is_right(name: str) -> None:
    """Practice has something to ask, whatever the draw."""
    one = placed(question("order", id=name))[name]
    assert tuple(option.id for option in one.question.options) != one.keyed.right


def test_questions_of_one_course_share_no_id() -> None:
    """Several of them may stand on one page."""
    made = placed(*(question(kind, id=f"by_{kind}") for kind in QUESTION_KINDS)).values()
    ids = [one.question.id for one in made] + [option.id for one in made for option in one.question.options]
    assert len(set(ids)) == len(ids)
