"""Author-written questions that belong to no case: one file each, of one of seven kinds."""

from __future__ import annotations

from typing import Literal, Self, get_args

from pydantic import Field, model_validator

from builder.model.noun import Format, Id, Noun, Text
from builder.model.question_kinds import (
    BestAnswer,
    Choices,
    Matching,
    Number,
    Ordering,
    Panel,
    WrittenAnswer,
)

QuestionKind = Literal["one", "many", "order", "match", "number", "panel", "text"]
QUESTION_KINDS: tuple[QuestionKind, ...] = get_args(QuestionKind)
QuestionLevel = Literal["remember", "understand", "apply", "analyse", "evaluate", "create"]

_OPTIONS = [
    {"text": "A cloth", "right": "yes", "because": "It keeps the skin from freezing."},
    {"text": "Nothing", "because": "The skin may freeze."},
]
_TWO = [*_OPTIONS, {"text": "A damp towel", "right": "yes", "because": "It carries the cold and is no ice."}]
_STEPS = [
    {"id": "pad", "text": "Lay the pad", "because": "It is held by the wrap."},
    {"id": "wrap", "text": "Wrap from below", "because": "Fluid is pushed upward."},
    {"id": "look", "text": "Look at the toes", "because": "A tight wrap shows there."},
]
_PAIRS = [
    {"left": "acute", "right": "limit the injury", "because": "It still bleeds."},
    {"left": "early repair", "right": "clear the swelling", "because": "Fluid is left."},
]
_VOTED = [
    {"text": "Wait a day", "votes": 9, "because": "The signs will be clearer."},
    {"text": "Go on", "votes": 3, "because": "Nothing has changed."},
]
_CRITERIA = [{"id": "reason", "title": "Names the reason", "levels": ["No", "In part", "Yes"]}]


class AuthorQuestion(Noun):
    """`questions/<id>.yml`: what is asked, what is right, and why. The block with the answer gives the kind.

    The levels are those of the revised taxonomy of Anderson and Krathwohl (2001).
    """

    format: Format
    id: Id = Field(
        description="The name of the question, the same as the name of its file.", examples=["cold_time"]
    )
    objective: Id = Field(description="The objective of the course that it is for.", examples=["choose"])
    level: QuestionLevel = Field(
        description="What the answer takes, from remembering to creating.", examples=["apply"]
    )
    use: Literal["practice", "test"] = Field(
        description="Practised on with reasons shown, or part of a test and shown nowhere else.",
        examples=["practice"],
    )
    stem: Text = Field(
        description="What is asked, with all that is needed to answer; emphasis is `**bold**`.",
        examples=["How long may a cold pack lie on a fresh bruise?"],
    )
    source: tuple[Id, ...] = Field(
        min_length=1,
        description="What the answer rests on: ids of `content/references.yml`.",
        examples=[["common_practice"]],
    )
    one: BestAnswer | None = Field(
        default=None,
        description="Single best answer: options, exactly one right.",
        examples=[{"options": _OPTIONS}],
    )
    many: Choices | None = Field(
        default=None,
        description="Multiple response: options, some of them right and some wrong.",
        examples=[{"options": _TWO}],
    )
    order: Ordering | None = Field(
        default=None,
        description="Ordering: steps, written in their right order.",
        examples=[{"steps": _STEPS}],
    )
    match: Matching | None = Field(
        default=None, description="Matching: what belongs to what.", examples=[{"pairs": _PAIRS}]
    )
    number: Number | None = Field(
        default=None,
        description="A number with its unit and tolerance.",
        examples=[{"value": 20, "unit": "minutes", "within": 5, "because": "Skin is numb by then."}],
    )
    panel: Panel | None = Field(
        default=None,
        description="A judgement: options with the votes of a panel of practitioners.",
        examples=[{"judges": "Twelve therapists, spring 2026", "options": _VOTED}],
    )
    text: WrittenAnswer | None = Field(
        default=None,
        description="A short written answer: an example and the criteria it is marked by.",
        examples=[{"example": "Rubbing would make it bleed more.", "criteria": _CRITERIA}],
    )

    @property
    def kind(self) -> QuestionKind:
        """The kind of answer that is asked for."""
        return next(kind for kind in QUESTION_KINDS if getattr(self, kind) is not None)

    @property
    def choices(self) -> Choices | None:
        """The options of a question where some are right and some wrong; None for every other kind."""
        return self.one or self.many

    @property
    def shown(self) -> tuple[str, ...]:
        """The texts of all that can be chosen, ordered or matched."""
        texts = [one.text for one in self.choices.options] if self.choices else []
        texts += [one.text for one in self.order.steps] if self.order else []
        texts += [one.text for one in self.panel.options] if self.panel else []
        if self.match:
            texts += [text for one in self.match.pairs for text in (one.left, one.right)]
            texts += [one.right for one in self.match.spare]
        return tuple(texts)

    @property
    def told(self) -> tuple[str, ...]:
        """All that may be told only once it is answered: reasons, or the example and levels of a rubric."""
        texts = [one.because for one in self.choices.options] if self.choices else []
        texts += [one.because for one in self.order.steps] if self.order else []
        texts += [one.because for one in self.panel.options] if self.panel else []
        if self.match:
            texts += [one.because for one in self.match.pairs] + [one.because for one in self.match.spare]
        if self.number:
            texts += [self.number.because, *(one.because for one in self.number.wrong)]
        if self.text:
            texts += [self.text.example, *(level for one in self.text.criteria for level in one.levels)]
        return tuple(texts)

    @model_validator(mode="after")
    def _one_answer(self) -> Self:
        given = [kind for kind in QUESTION_KINDS if getattr(self, kind) is not None]
        if len(given) != 1:
            raise ValueError("give the answer in exactly one of the blocks " + ", ".join(QUESTION_KINDS))
        return self
