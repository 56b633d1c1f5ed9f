"""What every noun shares: frozen, closed to unknown keys, and the small types it is made of."""

from __future__ import annotations

import re
from datetime import time
from decimal import Decimal
from fractions import Fraction
from typing import Annotated, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, StringConstraints

Id = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9_]*$", max_length=60)]
Text = Annotated[str, StringConstraints(min_length=1, max_length=4000, strip_whitespace=True)]
Format = Literal[1]
Strength = Literal["guideline", "review", "study", "case_report", "expert", "common_practice"]

_HOURS_IN = {"h": 1, "hour": 1, "hours": 1, "day": 24, "days": 24, "week": 168, "weeks": 168}
_SPAN = re.compile(r"(\d{1,6}(?:\.\d{1,6})?) ?([a-z]+)")
_PERCENT = re.compile(r"(\d{1,3}(?:\.\d{1,6})?) ?%")
_FRACTION = re.compile(r"\d{1,60}(?:/\d{1,60})?")


class Noun(BaseModel):
    """A value that never changes and knows exactly which keys it has."""

    model_config = ConfigDict(frozen=True, extra="forbid")


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


def text_alone(written: object) -> object:
    """A value that is written as text; a bare number would be taken for a count of seconds."""
    if isinstance(written, int | Decimal):
        raise ValueError("write it out, such as `09:30`")  # noqa: TRY004 - a ValueError reaches the author
    return written


Hours = Annotated[Decimal, BeforeValidator(hours_of), Field(ge=0)]
Share = Annotated[Fraction, BeforeValidator(share_of)]
TimeOfDay = Annotated[time, BeforeValidator(text_alone)]
