"""The policy for a number with a tolerance, compared as it was typed and never as a float."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from builder.grade.scoring.named import named
from builder.grade.scoring.value import Value, written

_NUMBER = re.compile(r"[+-]?(?:[0-9]{1,30}(?:[.][0-9]{0,30})?|[.][0-9]{1,30})")


@dataclass(frozen=True)
class NumberKey:
    """The least and the greatest number that is right, in the unit shown beside the field."""

    least: Fraction
    most: Fraction
    unit: str


def within(key: NumberKey, number: Fraction) -> Fraction:
    """All or nothing: within the tolerance, its ends included. Common practice, no source."""
    return Fraction(key.least <= number <= key.most)


NumberPolicy = Callable[[NumberKey, Fraction], Fraction]
NUMBER_POLICIES: Mapping[str, NumberPolicy] = MappingProxyType({"within": within})


def number_of(typed: str, unit: str) -> Fraction | None:
    """The number typed, with a point or a comma before its decimals; its own unit after it may stand or not.

    Another unit, and a number with marks between thousands, are no number: neither is guessed at.
    """
    text = typed.strip().lower()
    bare = text.removesuffix(unit.strip().lower()).strip()
    plain = bare.replace("\u2212", "-").replace(",", ".")
    return Fraction(plain.rstrip(".")) if _NUMBER.fullmatch(plain) else None


def score_number(key: NumberKey, policy: str, value: Value) -> Fraction:
    """What a number earns; what can not be read as one earns nothing."""
    rule, number = named(NUMBER_POLICIES, policy), number_of(written(value), key.unit)
    return Fraction(0) if number is None else rule(key, number)
