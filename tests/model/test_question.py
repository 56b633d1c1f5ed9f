"""Author-written questions: one block with the answer, whose name is the kind."""

from typing import Any

import pytest
from pydantic import BaseModel, ValidationError

from builder.model import question_kinds
from builder.model.noun import Noun
from builder.model.question import QUESTION_KINDS, AuthorQuestion
from tests.model.question_blocks import BLOCKS, QUESTION


@pytest.mark.parametrize("kind", QUESTION_KINDS)
def test_the_block_with_the_answer_is_the_kind(kind: str) -> None:
    """Each kind is read from its block alone."""
    question = AuthorQuestion.model_validate({**QUESTION, kind: BLOCKS[kind]})
    assert question.kind == kind
    assert (question.choices is not None) == (kind in ("one", "many"))


def test_every_kind_has_its_block() -> None:
    """The table of blocks below is complete."""
    assert BLOCKS.keys() == set(QUESTION_KINDS)


@pytest.mark.parametrize("kinds", [(), ("one", "many"), ("number", "text")])
def test_a_question_has_exactly_one_block(kinds: tuple[str, ...]) -> None:
    """No answer at all, and two answers, are refused."""
    with pytest.raises(ValidationError, match="exactly one of the blocks"):
        AuthorQuestion.model_validate({**QUESTION, **{kind: BLOCKS[kind] for kind in kinds}})


def test_a_question_names_its_source() -> None:
    """What an answer rests on is never left out."""
    with pytest.raises(ValidationError, match="source"):
        AuthorQuestion.model_validate({**QUESTION, "one": BLOCKS["one"], "source": []})


def test_every_field_says_what_it_is() -> None:
    """An editor shows a description and an example beside each key."""
    nouns: list[type[BaseModel]] = [AuthorQuestion]
    nouns += [
        one
        for one in vars(question_kinds).values()
        if isinstance(one, type) and issubclass(one, Noun) and one.__module__ == question_kinds.__name__
    ]
    bare: list[Any] = [
        (noun.__name__, name)
        for noun in nouns
        for name, field in noun.model_fields.items()
        if not (field.description and field.examples)
    ]
    assert len(nouns) > 10
    assert bare == []
