"""Numbers in options: the span of values that `1 to 5 minutes` or `at least 40` stands for."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

_WORDS = {
    word: str(value)
    for value, word in enumerate(
        "zero one two three four five six seven eight nine ten eleven twelve".split()  # noqa: SIM905 - a row of words
    )
} | {"twenty": "20", "thirty": "30", "forty": "40", "fifty": "50", "sixty": "60", "ninety": "90"}
_MINUTES = {
    "second": Fraction(1, 60), "minute": Fraction(1), "hour": Fraction(60), "day": Fraction(1440),
    "week": Fraction(10080), "month": Fraction(43200), "year": Fraction(525600),
}  # fmt: skip
TIME = "time"

_N, _U = r"(\d+(?:\.\d+)?)", r"(?: ?([a-z%°]+))?"
_TIME = f"(?:({'|'.join(_MINUTES)})s? )?"
_LEAD = re.compile(r"^(?:in|for|after|from|about|between|on|the|only|exactly) ")
_RANGE = re.compile(rf"^{_TIME}{_N}{_U} ?(?:to|-|–|and|or) ?{_TIME}{_N}{_U}$")
_BELOW = re.compile(rf"^(less than|under|below|fewer than|up to|at most|no more than|within) {_N}{_U}$")
_ABOVE = re.compile(rf"^(more than|over|above|at least|no less than) {_N}{_U}$")
_OR_LESS = re.compile(rf"^{_N}{_U} (?:or|and) (?:less|fewer|under|below)$")
_OR_MORE = re.compile(rf"^{_N}{_U} (?:or|and) (?:more|over|above|upwards)$")
_POINT = re.compile(rf"^{_TIME}{_N}{_U}$")
_CLOSED = ("up to", "at most", "no more than", "within", "at least", "no less than")


@dataclass(frozen=True)
class Span:
    """Values from `low` to `high` of one dimension (`time` in minutes, else the unit); None is no bound."""

    dimension: str
    low: Fraction | None
    high: Fraction | None
    low_open: bool = False
    high_open: bool = False

    def meets(self, other: Span) -> bool:
        """Whether the two share a value."""
        return self.dimension == other.dimension and _reaches(self, other) and _reaches(other, self)


def _reaches(one: Span, other: Span) -> bool:
    if one.high is None or other.low is None:
        return True
    return one.high > other.low or (one.high == other.low and not (one.high_open or other.low_open))


def span_of(text: str) -> Span | None:
    """The span an option stands for; None where it says anything but a quantity."""
    plain = _plain(text)
    if found := _RANGE.match(plain):
        before, low, unit, before_high, high, unit_high = found.groups()
        last = unit_high or before_high or unit or before
        first = _value(low, unit or before or last)
        return Span(_dimension(last), first, _value(high, last))
    for pattern in (_BELOW, _ABOVE):
        if found := pattern.match(plain):
            word, number, unit = found.groups()
            value, is_open = _value(number, unit), word not in _CLOSED
            if pattern is _BELOW:
                return Span(_dimension(unit), None, value, high_open=is_open)
            return Span(_dimension(unit), value, None, low_open=is_open)
    return _simple(plain)


def _simple(plain: str) -> Span | None:
    if found := _OR_LESS.match(plain):
        return Span(_dimension(found[2]), None, _value(found[1], found[2]))
    if found := _OR_MORE.match(plain):
        return Span(_dimension(found[2]), _value(found[1], found[2]), None)
    if found := _POINT.match(plain):
        unit = found[3] or found[1]
        return Span(_dimension(unit), _value(found[2], unit), _value(found[2], unit))
    return None


def _plain(text: str) -> str:
    """Small letters, digits for number words, without what leads in and without `of 10`."""
    said = re.sub(r"\s+", " ", text.lower().strip(" .;:"))
    said = re.sub(r"\ba quarter of an? ", "0.25 ", said)
    said = re.sub(r"\bhalf an? ", "0.5 ", said)
    said = re.sub(rf"\ban? (?=(?:{'|'.join(_MINUTES)})\b)", "1 ", said)
    said = re.sub(r"\b[a-z]+\b", lambda word: _WORDS.get(word[0], word[0]), said)
    said = re.sub(r" of \d+$", "", said)
    while lead := _LEAD.match(said):
        said = said[lead.end() :]
    return said


def _unit(unit: str | None) -> str:
    said = unit or ""
    singular = said.removesuffix("s")
    return singular if singular in _MINUTES else said


def _dimension(unit: str | None) -> str:
    return TIME if _unit(unit) in _MINUTES else _unit(unit)


def _value(number: str, unit: str | None) -> Fraction:
    return Fraction(number) * _MINUTES.get(_unit(unit), Fraction(1))
