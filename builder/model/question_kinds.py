"""What is right in an author-written question, for each kind of answer, with the reason of every part."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from typing import Self

from pydantic import Field, model_validator

from builder.model.noun import Id, Noun, Share, Text, Truth
from builder.model.station import Criterion


class Choice(Noun):
    """One option: its words, whether it is right, and why."""

    text: Text = Field(description="The option as it is shown.", examples=["20 minutes"])
    right: Truth = Field(default=False, description="Whether it is right.", examples=["yes"])
    because: Text = Field(
        description="Why it is right or wrong; shown after practice, kept with the key of a test.",
        examples=["The skin is looked at after that."],
    )


class Choices(Noun):
    """Options of which some are right and some wrong."""

    options: tuple[Choice, ...] = Field(
        min_length=2,
        max_length=8,
        description="All that can be chosen.",
        examples=[
            [
                {"text": "20 minutes", "right": "yes", "because": "The skin is looked at after that."},
                {"text": "60 minutes", "because": "That may hurt the skin."},
            ]
        ],
    )
    in_order: Truth = Field(
        default=False,
        description="Whether they keep the order written, such as rising numbers; else it is drawn.",
        examples=["yes"],
    )

    @property
    def right(self) -> tuple[int, ...]:
        """The positions of the right options, from 0."""
        return tuple(place for place, one in enumerate(self.options) if one.right)

    @model_validator(mode="after")
    def _right_and_wrong(self) -> Self:
        if not 0 < len(self.right) < len(self.options):
            raise ValueError("mark what is right with `right: yes`, and leave at least one option wrong")
        if len({one.text for one in self.options}) < len(self.options):
            raise ValueError("two options read the same: write them differently, or remove one")
        return self


class BestAnswer(Choices):
    """Options of which exactly one is right."""

    @model_validator(mode="after")
    def _one_right(self) -> Self:
        if len(self.right) != 1:
            raise ValueError("mark exactly one option with `right: yes`, or call the block `many`")
        return self


class OrderedStep(Noun):
    """One step of an order."""

    id: Id = Field(description="A name for it, which nobody sees.", examples=["pad"])
    text: Text = Field(description="The step as it is shown.", examples=["Lay the pad"])
    because: Text = Field(
        description="Why it stands where it does.", examples=["It is held by the wrap, so it comes first."]
    )
    after: tuple[Id, ...] = Field(
        default=(),
        description="Steps that must come before it whatever the marks for the rest.",
        examples=[["consent"]],
    )


class Ordering(Noun):
    """Steps, written in their right order."""

    steps: tuple[OrderedStep, ...] = Field(
        min_length=3,
        max_length=8,
        description="The steps, the first one first; shown in a drawn order.",
        examples=[
            [
                {"id": "pad", "text": "Lay the pad", "because": "It is held by the wrap."},
                {"id": "wrap", "text": "Wind the wrap", "because": "It holds the pad.", "after": ["pad"]},
                {"id": "look", "text": "Look at the toes", "because": "They show a wrap too tight."},
            ]
        ],
    )

    @model_validator(mode="after")
    def _after_what_is_before(self) -> Self:
        earlier: set[str] = set()
        for step in self.steps:
            if unknown := sorted(set(step.after) - earlier):
                raise ValueError(f"`after` of `{step.id}` names `{unknown[0]}`, which is no step before it")
            earlier.add(step.id)
        return self


class Pair(Noun):
    """Two things that belong together."""

    left: Text = Field(description="What a partner is sought for.", examples=["acute"])
    right: Text = Field(description="The partner that belongs to it.", examples=["limit the injury"])
    because: Text = Field(description="Why they belong together.", examples=["It still bleeds."])


class Spare(Noun):
    """A partner that belongs to nothing."""

    right: Text = Field(description="The partner as it is shown.", examples=["close the wound"])
    because: Text = Field(
        description="Why it belongs to none of them.", examples=["No phase has this for its aim."]
    )


class Matching(Noun):
    """Pairs to be put together again."""

    pairs: tuple[Pair, ...] = Field(
        min_length=2,
        max_length=8,
        description="What belongs together.",
        examples=[
            [
                {"left": "acute", "right": "limit the injury", "because": "It still bleeds."},
                {"left": "early repair", "right": "clear the swelling", "because": "It drains now."},
            ]
        ],
    )
    spare: tuple[Spare, ...] = Field(
        default=(),
        max_length=4,
        description="Partners of none, so that the last pair is no gift.",
        examples=[[{"right": "close the wound", "because": "No phase has this for its aim."}]],
    )

    @model_validator(mode="after")
    def _told_apart(self) -> Self:
        lefts = [one.left for one in self.pairs]
        rights = [*(one.right for one in self.pairs), *(one.right for one in self.spare)]
        if len(set(lefts)) < len(lefts) or len(set(rights)) < len(rights):
            raise ValueError("two lines of one side read the same: each may stand once")
        return self


class WrongNumber(Noun):
    """A number that is often given and wrong."""

    value: Decimal = Field(description="The number.", examples=[60])
    because: Text = Field(
        description="What leads to it, and why it is wrong.", examples=["That is the pause, not the pack."]
    )


class Number(Noun):
    """A number with its unit; what lies within the tolerance is right, its ends included."""

    value: Decimal = Field(description="The right number.", examples=[20])
    unit: Text = Field(description="Its unit as it is shown beside the field.", examples=["minutes"])
    within: Decimal | None = Field(
        default=None, ge=0, description="How far off is still right, in the unit.", examples=[5]
    )
    within_share: Share | None = Field(
        default=None, description="How far off is still right, as a share of the number.", examples=["5 %"]
    )
    because: Text = Field(description="Why it is this number.", examples=["Skin is numb by then."])
    wrong: tuple[WrongNumber, ...] = Field(
        default=(),
        description="Wrong numbers that have a reason of their own.",
        examples=[[{"value": 60, "because": "That is the pause, not the pack."}]],
    )

    @property
    def bounds(self) -> tuple[Fraction, Fraction]:
        """The least and the greatest number that is right, exactly."""
        value, share = Fraction(self.value), self.within_share
        width = Fraction(self.within or 0) if share is None else abs(value) * share
        return value - width, value + width

    @model_validator(mode="after")
    def _one_tolerance(self) -> Self:
        if (self.within is None) == (self.within_share is None):
            raise ValueError("give either `within` or `within_share`; `within: 0` where only it is right")
        if self.value == 0 and self.within_share is not None:
            raise ValueError("a share of 0 leaves nothing: give `within` instead")
        low, high = self.bounds
        right = next((one.value for one in self.wrong if low <= one.value <= high), None)
        if right is not None:
            raise ValueError(f"{right} stands under `wrong` and is within the tolerance")
        return self


class Voted(Noun):
    """One option of a judgement, with the votes it had."""

    text: Text = Field(description="The option as it is shown.", examples=["Wait a day"])
    votes: int = Field(ge=0, description="How many of the panel chose it.", examples=[9])
    because: Text = Field(
        description="What speaks for it or against it, in the panel's view.",
        examples=["A day costs little, and the signs will be clearer."],
    )


class Panel(Noun):
    """A judgement in which practitioners differ: it is compared with what a panel chose."""

    judges: Text = Field(
        description="Who was asked, and when; no names.",
        examples=["Twelve therapists with ten years of practice or more, spring 2026"],
    )
    options: tuple[Voted, ...] = Field(
        min_length=2,
        max_length=8,
        description="All that can be chosen.",
        examples=[
            [
                {"text": "Wait a day", "votes": 9, "because": "The signs will be clearer."},
                {"text": "Begin lightly", "votes": 4, "because": "The client travels on tomorrow."},
            ]
        ],
    )
    in_order: Truth = Field(
        default=False,
        description="Whether they keep the order written, such as steps of a scale; else it is drawn.",
        examples=["yes"],
    )

    @model_validator(mode="after")
    def _asked(self) -> Self:
        if not sum(one.votes for one in self.options):
            raise ValueError("nobody voted: give the `votes` of each option")
        return self


class WrittenAnswer(Noun):
    """A short written answer, marked by a person."""

    example: Text = Field(
        description="An answer that earns every point.",
        examples=["Your leg still bleeds inside, and rubbing would make it bleed more."],
    )
    words: int = Field(
        default=60, ge=5, le=400, description="About how many words are asked for.", examples=[40]
    )
    criteria: tuple[Criterion, ...] = Field(
        min_length=1,
        description="What is marked, with a sentence for each level from 0 upwards.",
        examples=[[{"id": "reason", "title": "Names the reason", "levels": ["No", "In part", "Yes"]}]],
    )
