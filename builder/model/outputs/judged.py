"""The judgement of one case, as part of the shape `caseloom/explain/1`."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from builder.model.card import Answer, Phase
from builder.model.outputs.output import Named, Output, Plain, RuleIds
from builder.model.rule import FirstAction, Urgency
from builder.model.tables import Severity


class ReasonSaid(Output):
    """One step of a judgement."""

    text: str = Field(description="The step in words.")
    facts: tuple[str, ...] = Field(description="The facts it looked at.")
    source: str | None = Field(description="What it rests on, as printed.")


class NextPhase(Output):
    """The phase that the calendar brings next."""

    phase: Phase = Field(description="The phase.")
    in_hours: Plain | None = Field(description="In how many hours.")


class PhaseSaid(Output):
    """The phase of healing at a visit."""

    declared: Phase | None = Field(description="What the author wrote.")
    possible: tuple[Phase, ...] = Field(description="What it may be, by what was recorded.")
    reasons: tuple[ReasonSaid, ...] = Field(description="Why, step by step.")
    next: NextPhase | None = Field(description="What comes next by the calendar alone.")


class SeveritySaid(Output):
    """How bad the injury is."""

    declared: Severity | None = Field(description="What the author wrote.")
    possible: tuple[Severity, ...] = Field(description="What it may be, by what was recorded.")
    table: str | None = Field(description="The published table that graded it, where one could.")
    gradable: bool = Field(description="Whether a published table could grade it at this visit.")
    reasons: tuple[ReasonSaid, ...] = Field(description="Why, step by step.")


class AskedSaid(Output):
    """A question whose answer would settle something."""

    fact: Named
    question: str = Field(description="The question as it is put.")
    rules: RuleIds


class FiredSaid(Output):
    """Something that bears on an answer."""

    id: Named
    truth: Literal["fires", "open"] = Field(description="Whether it surely fires, or waits for a record.")
    effect: str = Field(description="What it does: the answer or urgency it gives.")
    strength: str = Field(description="How strong its ground is.")
    source: tuple[str, ...] = Field(description="What it rests on, as ids of references.")
    contested: bool = Field(description="Whether practitioners differ on it.")


class SessionSaid(Output):
    """Whether the session may go on."""

    answer: Literal["go_on", "ask_first", "refer"] = Field(description="Go on, ask first, or refer.")
    urgency: Urgency | None = Field(description="How soon the client must be seen, where it is refer.")
    ask: tuple[AskedSaid, ...] = Field(description="What to ask first.")
    rules: tuple[FiredSaid, ...] = Field(description="The rules behind it.")
    first_action: FirstAction | None = Field(description="What to do at once, and what not.")


class Changed(Output):
    """A smallest change in the room that gives another answer."""

    set: dict[str, Plain] = Field(description="What would be otherwise, by fact or attribute.")
    answer: Answer = Field(description="The answer then.")
    text: str = Field(description="The change in words.")


class OptionSaid(Output):
    """One option as written, or one card at its usual dose."""

    id: Named
    card: Named
    written: dict[str, Plain] = Field(description="Site, dose and preparation, by attribute.")
    offered: Literal["chosen", "wrong"] | None = Field(description="As what the author offers it, if at all.")
    answer: Answer = Field(description="The answer as it surely is.")
    at_worst: Answer = Field(description="The answer with everything unrecorded taken at its worst.")
    serves_aim: bool = Field(description="Whether it serves what treatment is for today.")
    right: bool = Field(description="OK even at worst, and serving the aim.")
    ask: tuple[AskedSaid, ...] = Field(description="What would settle the answer.")
    rules: tuple[FiredSaid, ...] = Field(description="The rules and cells behind it.")
    change: str | None = Field(description="What to change, where it is OK only if changed.")
    would_change: tuple[Changed, ...] = Field(description="Smallest changes that give another answer.")
    more_would_change: bool = Field(description="Whether there are more such changes than are told.")


class VisitSaid(Output):
    """One visit."""

    id: Named
    phase: PhaseSaid = Field(description="The phase.")
    severity: SeveritySaid = Field(description="The severity.")
    session: SessionSaid = Field(description="The session.")
    options: tuple[OptionSaid, ...] = Field(description="The options of the case, in the author's order.")
    cards: dict[str, OptionSaid] = Field(description="Every card at its usual dose on the injury, by its id.")


class ExplainedCase(Output):
    """A case, visit by visit."""

    format: Literal["caseloom/explain/1"] = Field(description="The shape, and the number of its format.")
    case: Named
    visits: tuple[VisitSaid, ...] = Field(description="Its visits, in order.")
