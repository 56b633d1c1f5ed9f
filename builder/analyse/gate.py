"""Which figure is printed for how many sitters, and the reason where it is not."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from builder.analyse.items import Rows, fisher, item_rest, reliability, reliability_error, wilson
from builder.model.analysis import Figure

DIFFICULTY_FROM = 10  # own default; at 5 of 10 the limits still run from .24 to .76
RELATIONS_FROM = 30  # own default, the floor of showing; no published figure was found for it
FIRM_FROM = 50  # discrimination is believable in classes larger than this (Penn State, Schreyer Institute)

FEW_FOR_SHARE = "Fewer than {least} sat it ({n}), so the counts alone are given."
FEW_FOR_RELATIONS = (
    "Fewer than {least} sat it ({n}), so chance would decide it; the counts are the better guide."
)
PROVISIONAL = "Provisional with {n}: look at what is negative, and act on nothing else before {least}."
IN_PARTS = "Marks come in parts, so the limits for right or wrong do not apply."
SAME = "Not defined: every sitter has the same {what}."


def difficulty(marks: Sequence[Fraction]) -> Figure:
    """The mean mark of a question, with 95 % limits where it is marked right or wrong."""
    n = len(marks)
    if n < DIFFICULTY_FROM:
        return Figure(value=None, note=FEW_FOR_SHARE.format(n=n, least=DIFFICULTY_FROM))
    mean = float(sum(marks, Fraction(0)) / n)
    if any(mark not in (0, 1) for mark in marks):
        return Figure(value=mean, note=IN_PARTS)
    low, high = wilson(sum(mark == 1 for mark in marks), n)
    return Figure(value=mean, low=low, high=high)


def discrimination(rows: Rows, item: int) -> Figure:
    """How a question goes with the rest of the test."""
    n = len(rows)
    if n < RELATIONS_FROM:
        return _too_few(n)
    value = item_rest(rows, item)
    if value is None:
        return Figure(value=None, note=SAME.format(what="mark here or on the rest"))
    low, high = fisher(value, n) or (None, None)
    return Figure(value=value, low=low, high=high, note=_trust(n))


def consistency(rows: Rows) -> Figure:
    """KR-20 or alpha of a version, give or take 1.96 standard errors."""
    n = len(rows)
    if n < RELATIONS_FROM:
        return _too_few(n)
    value = reliability(rows)
    if value is None:
        return Figure(value=None, note=SAME.format(what="total, or there is one question"))
    half = 1.96 * reliability_error(value, n, len(rows[0]))
    return Figure(
        value=float(value), low=float(value) - half, high=min(1.0, float(value) + half), note=_trust(n)
    )


def _too_few(n: int) -> Figure:
    return Figure(value=None, note=FEW_FOR_RELATIONS.format(n=n, least=RELATIONS_FROM))


def _trust(n: int) -> str:
    return PROVISIONAL.format(n=n, least=FIRM_FROM) if n < FIRM_FROM else ""
