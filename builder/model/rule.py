"""Rules: one clinical rule each, which can only tighten what the cards allow."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal, Self

from pydantic import Field, model_validator

from builder.model.card import Contested, Reviewed, Site
from builder.model.condition import Condition, Limits
from builder.model.noun import Format, Id, Noun, Strength, Text

Urgency = Literal["emergency", "same_day", "days", "not_urgent"]
URGENCIES: tuple[Urgency, ...] = ("not_urgent", "days", "same_day", "emergency")


class FirstAction(Noun):
    """What to do at once, and what not to do."""

    do: tuple[Text, ...] = Field(min_length=1)
    avoid: tuple[Text, ...] = ()


class SessionEffect(Noun):
    """What a rule does to the session: stop and refer, with an urgency."""

    urgency: Urgency
    first_action: FirstAction | None = None


class OptionEffect(Noun):
    """What a rule does to options: it answers, or it needs something written."""

    cards: tuple[Id, ...] = Field(default=(), description="Cards meant by id.")
    groups: tuple[Id, ...] = Field(
        default=(), description="Cards meant by group; `hands_on`, `techniques` are given."
    )
    sites: tuple[Site, ...] = Field(default=(), description="Only at these sites; empty means everywhere.")
    answer: Literal["not_yet", "barred"] | None = None
    needs: Limits = Field(default_factory=dict, description="Attributes that must be written so.")

    @model_validator(mode="after")
    def _one_effect(self) -> Self:
        if (self.answer is None) == (not self.needs):
            raise ValueError("give either `answer` or `needs`")
        if not (self.cards or self.groups):
            raise ValueError("name the `cards` or `groups` this is about")
        return self


class RuleExample(Noun):
    """Facts under which the rule surely fires, or surely does not; run as a test."""

    fires: Literal["yes", "no"]
    given: dict[str, str | Decimal]


class Rule(Noun):
    """One clinical rule: when it fires, what it does, why, and on what authority."""

    format: Format
    id: Id
    title: Text
    when: Condition
    session: SessionEffect | None = None
    options: tuple[OptionEffect, ...] = ()
    why: Text
    source: tuple[Id, ...] = Field(min_length=1)
    strength: Strength
    contested: Contested | None = None
    reviewed: Reviewed | None = None
    examples: tuple[RuleExample, ...] = Field(min_length=2)

    @model_validator(mode="after")
    def _does_something(self) -> Self:
        if self.session is None and not self.options:
            raise ValueError("a rule needs an effect: `session` or `options`")
        return self
