"""Marks one question, exactly."""

from __future__ import annotations

from collections.abc import Collection
from fractions import Fraction

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
    return Mark(
        question=answer.question,
        mark=Fraction(0) if value is None else _earned(answer, _chosen(value)),
        given=value is not None,
        must_pass=answer.must_pass,
    )


def plus_minus(right: Collection[str], chosen: Collection[str]) -> Fraction:
    """Right choices less wrong ones, of all that are right, not below 0.

    Betts, Muntean, Kim & Kao 2022, Educational and Psychological Measurement 82:151-176.
    """
    hits = len(set(chosen) & set(right))
    misses = len(set(chosen) - set(right))
    return Fraction(max(0, hits - misses), len(set(right)))


def _earned(answer: KeyAnswer, chosen: frozenset[str]) -> Fraction:
    if answer.kind == "many" and answer.policy == "plus_minus" and answer.right:
        return plus_minus(answer.right, chosen)
    return Fraction(chosen == frozenset(answer.right))


def _chosen(value: str | tuple[str | tuple[str, str], ...]) -> frozenset[str]:
    if isinstance(value, str):
        return frozenset({value})
    return frozenset(one if isinstance(one, str) else "" for one in value)
