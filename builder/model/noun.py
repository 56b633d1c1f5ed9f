"""What every noun shares: frozen, closed to unknown keys, and the small types it is made of."""

from __future__ import annotations

import re
from datetime import date, time
from decimal import Decimal
from fractions import Fraction
from typing import Annotated, Literal

from pydantic import (
    AfterValidator,
    BaseModel,
    BeforeValidator,
    ConfigDict,
    Field,
    StringConstraints,
    WithJsonSchema,
)
from pydantic_core import PydanticCustomError

Id = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9_]*$", max_length=60)]
Text = Annotated[str, StringConstraints(min_length=1, max_length=4000, strip_whitespace=True)]
Format = Annotated[
    Literal[1],
    Field(description="The number of this file's format; a newer one needs a newer caseloom.", examples=[1]),
]
Strength = Annotated[
    Literal["guideline", "review", "study", "case_report", "expert", "common_practice"],
    Field(description="How strong the source is, from guideline to common practice.", examples=["review"]),
]

_HOURS_IN = {"h": 1, "hour": 1, "hours": 1, "day": 24, "days": 24, "week": 168, "weeks": 168}
_SPAN = re.compile(r"(\d{1,6}(?:\.\d{1,6})?) ?([a-z]+)")
_PERCENT = re.compile(r"(\d{1,3}(?:\.\d{1,6})?) ?%")
_FRACTION = re.compile(r"\d{1,60}(?:/\d{1,60})?")
_DAY = re.compile(r"\d{4}-\d\d-\d\d")
_CLOCK = re.compile(r"\d\d:\d\d(?::\d\d)?")
_TRUTHS = {"yes": True, "no": False}


class Noun(BaseModel):
    """A value that never changes and knows exactly which keys it has."""

    model_config = ConfigDict(frozen=True, extra="forbid")


def _tag(written: str) -> str:
    if not re.fullmatch(r"[a-z]{2,3}(-[A-Za-z0-9]{2,8})*", written):
        raise ValueError("write a language tag such as `en`, `de` or `en-GB`")
    return written


Language = Annotated[str, AfterValidator(_tag)]


def hours_of(written: object) -> object:
    """Hours from a written span such as `30 h`, `9 days` or `4 weeks`; a number is taken as hours."""
    if not isinstance(written, str):
        return written
    match = _SPAN.fullmatch(written.strip())
    if match is None or match[2] not in _HOURS_IN:
        raise ValueError("write a span of time such as `30 h`, `9 days` or `4 weeks`")
    return Decimal(match[1]) * _HOURS_IN[match[2]]


def share_of(written: object) -> Fraction:
    """An exact fraction between 0 and 1 from a written share such as `75 %`, `3/4` or 0.75."""
    share = _share_in(written.strip()) if isinstance(written, str) else None
    if isinstance(written, int | Decimal | Fraction) and not isinstance(written, bool):
        share = Fraction(written)
    if share is None or not 0 <= share <= 1:
        raise ValueError("write a share between 0 % and 100 %, such as `75 %` or `3/4`")
    return share


def _share_in(text: str) -> Fraction | None:
    if percent := _PERCENT.fullmatch(text):
        return Fraction(percent[1]) / 100
    try:
        return Fraction(text) if _FRACTION.fullmatch(text) else None
    except ZeroDivisionError:
        return None


def truth_of(written: object) -> bool:
    """Whether a thing is so, from `yes` or `no`, `true` or `false`; nothing else stands for either."""
    if isinstance(written, bool):
        return written
    if isinstance(written, str) and written in _TRUTHS:
        return _TRUTHS[written]
    raise PydanticCustomError("bool_type", "write `yes` or `no`")


def day_of(written: object) -> object:
    """A day that is written as year, month and day; a bare number would be taken for a count of seconds."""
    if isinstance(written, date) or (isinstance(written, str) and _DAY.fullmatch(written)):
        return written
    raise PydanticCustomError("date_type", "write year, month and day")


def time_of(written: object) -> object:
    """A time of day that is written out; a bare number would be taken for a count of seconds."""
    if isinstance(written, int | Decimal):
        raise ValueError("write it out, such as `09:30`")  # noqa: TRY004 - a ValueError reaches the author
    if isinstance(written, str) and not _CLOCK.fullmatch(written):
        raise PydanticCustomError("time_type", "write hours and minutes")
    return written


def _shaped(pattern: str, how: str, **number: float) -> WithJsonSchema:
    """Text of a shape, or a number within bounds where bounds are given; `how` is what an editor says."""
    kinds = ["string", "number"] if number else "string"
    return WithJsonSchema({"type": kinds, "pattern": pattern, "patternErrorMessage": how, **number})


Hours = Annotated[
    Decimal,
    BeforeValidator(hours_of),
    Field(ge=0),
    _shaped(
        rf"^\s*[0-9]{{1,6}}(\.[0-9]{{1,6}})? ?({'|'.join(_HOURS_IN)})\s*$",
        "Write a span of time such as `30 h`, `9 days` or `4 weeks`.",
        minimum=0,
    ),
]
Share = Annotated[
    Fraction,
    BeforeValidator(share_of),
    _shaped(
        r"^\s*([0-9]{1,3}(\.[0-9]{1,6})? ?%|[0-9]{1,60}(/[0-9]{1,60})?)\s*$",
        "Write a share such as `75 %` or `3/4`.",
        minimum=0,
        maximum=1,
    ),
]
TimeOfDay = Annotated[
    time,
    BeforeValidator(time_of),
    _shaped(r"^([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9])?$", "Write a time such as `09:30`."),
]
Day = Annotated[
    date,
    BeforeValidator(day_of),
    _shaped(r"^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$", "Write a day such as `2026-11-25`."),
]
Truth = Annotated[bool, BeforeValidator(truth_of), WithJsonSchema({"enum": ["yes", "no", True, False]})]
