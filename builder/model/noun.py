"""What every noun shares: frozen, closed to unknown keys, and the small types it is made of."""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction
from typing import Annotated, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, StringConstraints

Id = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9_]*$", max_length=60)]
Text = Annotated[str, StringConstraints(min_length=1, max_length=4000, strip_whitespace=True)]
Format = Literal[1]
Strength = Literal["guideline", "review", "study", "case_report", "expert", "common_practice"]

_HOURS_IN = {"h": 1, "hour": 1, "hours": 1, "day": 24, "days": 24, "week": 168, "weeks": 168}
_SPAN = re.compile(r"^(\d+(?:\.\d+)?) ?([a-z]+)$")


class Noun(BaseModel):
    """A value that never changes and knows exactly which keys it has."""

    model_config = ConfigDict(frozen=True, extra="forbid")


def hours_of(written: object) -> object:
    """Hours from a written span such as `30 h`, `9 days` or `4 weeks`; a number is taken as hours."""
    if not isinstance(written, str):
        return written
    match = _SPAN.match(written.strip())
    if match is None or match[2] not in _HOURS_IN:
        raise ValueError("write a span of time such as `30 h`, `9 days` or `4 weeks`")
    return Decimal(match[1]) * _HOURS_IN[match[2]]


def share_of(written: object) -> object:
    """An exact fraction from a written share such as `75 %` or `3/4`."""
    if isinstance(written, str):
        percent = re.fullmatch(r"(\d+(?:\.\d+)?) ?%", written.strip())
        try:
            return Fraction(percent[1]) / 100 if percent else Fraction(written.strip())
        except (ValueError, ZeroDivisionError):
            raise ValueError("write a share such as `75 %` or `3/4`") from None
    return Fraction(str(written)) if isinstance(written, (int, Decimal)) else written


Hours = Annotated[Decimal, BeforeValidator(hours_of)]
Share = Annotated[Fraction, BeforeValidator(share_of)]
