"""Marks one question, exactly."""

from __future__ import annotations

from builder.grade.scoring.choices import ChoiceKey
from builder.grade.scoring.registry import score
from builder.model.answers import AnswerSheet, Given
from builder.model.key import Key, KeyAnswer
from builder.model.records import Mark


def marks_of(sheet: AnswerSheet, key: Key) -> tuple[Mark, ...]:
    """A mark for every question of the key, in its order; what was not answered earns nothing."""
    given = {one.q: one for one in sheet.answers}
    return tuple(mark(answer, given.get(answer.question)) for answer in key.answers)


def mark(answer: KeyAnswer, given: Given | None) -> Mark:
    """What one answer earns, from 0 to 1."""
    value = given.value if given else None
    policy = answer.policy if answer.kind == "many" else "exact"
    return Mark(
        question=answer.question,
        mark=score(ChoiceKey(answer.options, frozenset(answer.right)), policy, value),
        given=value is not None,
        must_pass=answer.must_pass,
    )
