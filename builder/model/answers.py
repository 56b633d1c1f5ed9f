"""The answer sheet: one participant's answers, as the site hands them over."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints

Handed = Annotated[str, StringConstraints(max_length=200)]
Long = Annotated[str, StringConstraints(max_length=4000)]
QuestionKind = Literal["one", "many", "order", "match", "number", "text"]


class Given(BaseModel):
    """One given answer; `null` is unanswered."""

    model_config = ConfigDict(frozen=True, extra="allow")

    q: Handed
    kind: QuestionKind
    value: Long | tuple[Handed | tuple[Handed, Handed], ...] | None


class AnswerSheet(BaseModel):
    """Shape `caseloom/answers/1`; unknown keys are kept."""

    model_config = ConfigDict(frozen=True, extra="allow")

    format: Literal["caseloom/answers/1"]
    sheet: Annotated[str, StringConstraints(pattern=r"^[0-9a-f]{32}$")]
    rev: int = Field(ge=1)
    edition: Handed
    test: Handed
    version: Handed
    klass: Handed = Field(alias="class")
    code: Handed
    started: datetime
    finished: datetime | None
    zone: Handed
    answers: tuple[Given, ...] = Field(max_length=500)
    crc32: Annotated[str, StringConstraints(pattern=r"^[0-9a-f]{8}$")]


def flat(edition: str, test: str, version: str, code: str, answers: tuple[Given, ...]) -> str:
    r"""The string the checksum runs over: head, then one `q=value` a line, in the order of the sheet.

    A list is joined with `,`, a pair with `>`; an unanswered question is `q=` alone. Lines end in `\n`.
    """
    head = f"{edition}|{test}|{version}|{code}\n"
    return head + "".join(f"{one.q}={_flat_value(one.value)}\n" for one in answers)


def _flat_value(value: object) -> str:
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    if isinstance(value, tuple):
        return ",".join(one if isinstance(one, str) else ">".join(one) for one in value)
    raise TypeError(type(value).__name__)
