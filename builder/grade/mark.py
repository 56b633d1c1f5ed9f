"""Marks one question, exactly."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction

from builder.grade.scoring.keyed import keyed
from builder.grade.scoring.registry import score
from builder.grade.scoring.rubric import points
from builder.model.answers import AnswerSheet, Given
from builder.model.code import tidy
from builder.model.key import Key, KeyAnswer
from builder.model.keyed import Rubric
from builder.model.marking import Marked, same_words
from builder.model.records import Mark


def marks_of(sheet: AnswerSheet, key: Key, markings: Iterable[Marked] = ()) -> tuple[Mark, ...]:
    """A mark for every question of the key, in its order; what was not answered earns nothing."""
    given = {one.q: one for one in sheet.answers}
    place = tidy(sheet.code), sheet.test
    mine = [one for one in markings if (tidy(one.code), one.test) == place]
    return tuple(mark(answer, given.get(answer.question), mine) for answer in key.answers)


def mark(answer: KeyAnswer, given: Given | None, markings: Iterable[Marked] = ()) -> Mark:
    """What one answer earns, from 0 to 1; a written answer that nobody has wholly marked waits."""
    value = given.value if given else None
    waits = False
    if answer.rubric is None:
        parts, policy = keyed(answer), "exact" if answer.kind == "one" else answer.policy
        earned = Fraction(0) if parts is None else score(parts, policy, value)
    else:
        levels = levels_of(answer, value, markings)
        waits = value is not None and not _whole(answer.rubric, levels)
        earned = Fraction(0) if waits else points(answer.rubric.criteria, levels)
    return Mark(
        question=answer.question,
        mark=earned,
        given=value is not None,
        must_pass=answer.must_pass,
        waits=waits,
    )


def levels_of(answer: KeyAnswer, value: object, markings: Iterable[Marked]) -> Mapping[str, int]:
    """The levels marked of a written answer, by criterion; marks of another text count for nothing."""
    if not isinstance(value, str):
        return {}
    mine = (one for one in markings if one.question == answer.written and same_words(one.answer, value))
    return {one.criterion: one.level for one in mine}


def _whole(rubric: Rubric, levels: Mapping[str, int]) -> bool:
    return all(one.id in levels for one in rubric.criteria)
