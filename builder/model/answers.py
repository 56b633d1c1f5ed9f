"""The answer sheet: one participant's answers, as the site hands them over."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints

from builder.model.question import QuestionKind

Handed = Annotated[str, StringConstraints(max_length=200)]
Long = Annotated[str, StringConstraints(max_length=4000)]


class Given(BaseModel):
    """One given answer; `null` is unanswered.

    The value is an option's id (one, panel), sorted ids (many), every step's id in the order given (order),
    pairs of a left and a right id for each left side that has a partner (match), the number with a point
    before its decimals and without its unit (number; `typed` beside it holds what was typed), or the text.
    """

    model_config = ConfigDict(frozen=True, extra="allow")

    q: Handed = Field(description="The question's id in the paper.")
    kind: QuestionKind = Field(description="The kind of question.")
    value: Long | tuple[Handed | tuple[Handed, Handed], ...] | None = Field(
        description="What was answered, as the kind has it; null is unanswered."
    )
    typed: Handed | None = Field(default=None, description="Of a number, what was typed.")


class SheetTime(BaseModel):
    """What a sheet says of a time limit, by the participant's own clock: claimed, not proven."""

    model_config = ConfigDict(frozen=True, extra="allow")

    limit: int = Field(description="Minutes, as the test sets them.")
    more: Handed = Field(description="How many times as long was agreed, or `none` for no limit.")
    began: datetime = Field(description="When the time began.")
    late: tuple[Handed, ...] = Field(max_length=500, description="The questions answered after it was over.")


class AnswerSheet(BaseModel):
    """Shape `caseloom/answers/1`; unknown keys are kept."""

    model_config = ConfigDict(frozen=True, extra="allow")

    format: Literal["caseloom/answers/1"] = Field(description="The shape, and the number of its format.")
    sheet: Annotated[str, StringConstraints(pattern=r"^[0-9a-f]{32}$")] = Field(
        description="A random name of the sheet, the same through all its revisions."
    )
    rev: int = Field(ge=1, description="The revision; of one sheet the highest counts.")
    edition: Handed = Field(description="The edition of the test it answers.")
    test: Handed = Field(description="The test's id.")
    version: Handed = Field(description="The version that was sat.")
    klass: Handed = Field(alias="class", description="The class it was sat in.")
    code: Handed = Field(description="The participant's personal code.")
    started: datetime = Field(description="When it was begun, by the participant's clock.")
    finished: datetime | None = Field(description="When it was handed in; null is a draft.")
    zone: Handed = Field(description="The time zone of that clock, by name.")
    answers: tuple[Given, ...] = Field(max_length=500, description="One for each question, in their order.")
    time: SheetTime | None = Field(default=None, description="Only where the test has a time limit.")
    crc32: Annotated[str, StringConstraints(pattern=r"^[0-9a-f]{8}$")] = Field(
        description="A checksum against damage, over a flat string of the above; it proves no honesty."
    )


def flat(edition: str, test: str, version: str, code: str, answers: tuple[Given, ...]) -> str:
    r"""The string the checksum runs over: head, then one `q=value` a line, in the order of the sheet.

    The same for every kind: a text stands as it is, a list is joined with `,`, each pair in it with `>`; an
    unanswered question is `q=` alone. What was typed of a number is not in it. Lines end in `\n`.
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
