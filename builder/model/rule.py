"""Rules: one clinical rule each, which can only tighten what the cards allow."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal, Self

from pydantic import Field, model_validator

from builder.model.card import Card, Contested, Reviewed, Site, groups_of
from builder.model.condition import Condition, Limits
from builder.model.noun import Format, Id, Noun, Strength, Text

Urgency = Literal["emergency", "same_day", "days", "not_urgent"]
URGENCIES: tuple[Urgency, ...] = ("not_urgent", "days", "same_day", "emergency")


class FirstAction(Noun):
    """What to do at once, and what not to do."""

    do: tuple[Text, ...] = Field(
        min_length=1, description="What to do at once.", examples=[["Call the emergency number"]]
    )
    avoid: tuple[Text, ...] = Field(
        default=(), description="What not to do.", examples=[["Kneading the calf"]]
    )


class SessionEffect(Noun):
    """What a rule does to the session: stop and refer, with an urgency."""

    urgency: Urgency = Field(description="How soon the client must be seen.", examples=["same_day"])
    first_action: FirstAction | None = Field(
        default=None,
        description="What to do at once, and what not to do.",
        examples=[{"do": ["Have it seen today"]}],
    )


class OptionEffect(Noun):
    """What a rule does to options: it answers, or it needs something written."""

    cards: tuple[Id, ...] = Field(default=(), description="Cards meant by id.", examples=[["knead"]])
    groups: tuple[Id, ...] = Field(
        default=(),
        description="Cards meant by family; `hands_on`, `techniques` and `all` are given.",
        examples=[["hands_on"]],
    )
    sites: tuple[Site, ...] = Field(
        default=(), description="Only at these sites; empty means everywhere.", examples=[["on", "adjacent"]]
    )
    answer: Literal["not_yet", "barred"] | None = Field(
        default=None, description="What the rule says of them.", examples=["not_yet"]
    )
    needs: Limits = Field(
        default_factory=dict,
        description="What must be written, each attribute with its bounds.",
        examples=[{"pressure": {"at_most": 2}}],
    )

    def addresses(self, card: Card) -> bool:
        """Whether it is about this card."""
        return card.id in self.cards or not groups_of(card).isdisjoint(self.groups)

    @model_validator(mode="after")
    def _one_effect(self) -> Self:
        if (self.answer is None) == (not self.needs):
            raise ValueError("give either `answer` or `needs`")
        if not (self.cards or self.groups):
            raise ValueError("name the `cards` or `groups` this is about")
        return self


class RuleExample(Noun):
    """Facts under which the rule surely fires, or surely does not; run as a test."""

    fires: Literal["yes", "no"] = Field(
        description="Whether the rule surely fires, or surely does not.", examples=["yes"]
    )
    given: dict[str, str | Decimal] = Field(
        description="The facts, each with its value.", examples=[{"fever": "yes"}]
    )


class Rule(Noun):
    """One clinical rule: when it fires, what it does, why, and on what authority."""

    format: Format
    id: Id = Field(
        description="The name of the rule, the same as the name of its file.", examples=["fever_today"]
    )
    title: Text = Field(description="The rule as it is headed.", examples=["Fever today"])
    when: Condition = Field(description="When it fires.", examples=[{"fever": "yes"}])
    session: SessionEffect | None = Field(
        default=None,
        description="What it does to the session; leave it out where it does nothing.",
        examples=[{"urgency": "same_day"}],
    )
    options: tuple[OptionEffect, ...] = Field(
        default=(),
        description="What it does to options.",
        examples=[[{"groups": ["hands_on"], "answer": "barred"}]],
    )
    why: Text = Field(
        description="The reason, for the learner.", examples=["It may be an infection that spreads."]
    )
    source: tuple[Id, ...] = Field(
        min_length=1,
        description="What it rests on: ids of `content/references.yml`.",
        examples=[["common_practice"]],
    )
    strength: Strength = Field(description="How strong the source is.", examples=["common_practice"])
    contested: Contested | None = Field(
        default=None,
        description="Where teaching and literature differ: both sides.",
        examples=[{"point": "cold_heals", "taught": "Cold speeds healing.", "other": "Not shown."}],
    )
    reviewed: Reviewed | None = Field(
        default=None,
        description="Which clinician has looked at it; empty until one has.",
        examples=[{"who": "Isaura Penhallow", "licence": "Physician, MF 2210", "date": "2026-11-25"}],
    )
    examples: tuple[RuleExample, ...] = Field(
        min_length=2,
        description="Clients for whom it fires, and for whom it does not; they run as tests.",
        examples=[[{"fires": "yes", "given": {"fever": "yes"}}, {"fires": "no", "given": {"fever": "no"}}]],
    )

    @model_validator(mode="after")
    def _does_something(self) -> Self:
        if self.session is None and not self.options:
            raise ValueError("a rule needs an effect: `session` or `options`")
        return self
