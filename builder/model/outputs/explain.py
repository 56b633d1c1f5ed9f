"""The shape `caseloom/explain/1`: a case, a check, a rule, a card, policies or settings, explained."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field, RootModel

from builder.diagnostic import Level
from builder.model.card import Card
from builder.model.outputs.judged import ExplainedCase
from builder.model.outputs.output import Named, Output
from builder.model.rule import Rule

_Format = Annotated[
    Literal["caseloom/explain/1"], Field(description="The shape, and the number of its format.")
]


class NamedCheck(Output):
    """One check of the list."""

    check: Named
    level: Level = Field(description="How much it matters.")


class ExplainedChecks(Output):
    """Every check by name."""

    format: _Format
    checks: tuple[NamedCheck, ...] = Field(description="All checks, by name.")


class ExampleSaid(Output):
    """Lines of one file that a check finds, or does not."""

    file: str = Field(description="The file they stand in.")
    at: str = Field(description="The block of the file, such as `visits/0`; empty is the whole file.")
    text: str | None = Field(description="The lines; null where the file is missing or a link.")
    link: str = Field(description="Where a link leads; empty where it is none.")
    more: tuple[ExampleSaid, ...] = Field(description="Files that belong to it.")


class ExplainedCheck(Output):
    """One check."""

    format: _Format
    check: Named
    level: Level = Field(description="How much it matters.")
    says: str = Field(description="What it finds.")
    why: str = Field(description="Why that is to be mended.")
    bad: ExampleSaid = Field(description="An example that it finds.")
    good: ExampleSaid = Field(description="The same, mended.")


class ExplainedRule(Output):
    """One rule, as the schema of rules describes it; what is not set is left out."""

    format: _Format
    rule: Rule = Field(description="The rule.")


class ExplainedCard(Output):
    """One card, as the schema of cards describes it; what is not set is left out."""

    format: _Format
    card: Card = Field(description="The card.")


class PolicySaid(Output):
    """One policy."""

    policy: Named
    text: str | None = Field(description="Its text; null where it is asked for and not written.")
    asked_by: tuple[str, ...] = Field(description="The approving bodies that ask for it, as printed.")


class ExplainedPolicies(Output):
    """The policies that are written or asked for."""

    format: _Format
    policies: tuple[PolicySaid, ...] = Field(description="Each policy.")


class SettingSaid(Output):
    """One setting."""

    setting: str = Field(description="Its name; settings of a test begin with the test's.")
    value: str = Field(description="What holds.")
    origin: str = Field(alias="from", description="The file it comes from, or `default`.")


class ExplainedSettings(Output):
    """What holds, and where it comes from."""

    format: _Format
    settings: tuple[SettingSaid, ...] = Field(description="Each setting.")


class DaySaid(Output):
    """One day of the agenda by one board."""

    day: int = Field(description="Which day, from 1.")
    planned: int = Field(description="Minutes planned, breaks and meals among them.")
    counted: int = Field(description="Minutes that count.")
    breaks: int = Field(description="Minutes of break among those that count.")
    hours: str = Field(description="Hours of this day, as an exact fraction.")
    held: Literal["", "clock", "day"] = Field(description="Which limit of the board held them, if one did.")


class HoursSaid(Output):
    """The agenda added up by one board."""

    board: Named
    read: str = Field(description="The day on which the board's rules were read.")
    unit: str = Field(description="What it calls an hour.")
    days: tuple[DaySaid, ...] = Field(description="Day by day.")
    exact: str = Field(description="All days in the board's unit, as an exact fraction.")
    amount: str = Field(description="The same as it is rounded and printed, as an exact fraction.")
    hands_on: str = Field(description="The share of hands-on work in the taught minutes that count.")


class ExplainedHours(Output):
    """The hours of a course by each of its boards."""

    format: _Format
    hours: tuple[HoursSaid, ...] = Field(description="Board by board.")


class ExplainOutput(
    RootModel[
        ExplainedCase
        | ExplainedCheck
        | ExplainedChecks
        | ExplainedRule
        | ExplainedCard
        | ExplainedPolicies
        | ExplainedSettings
        | ExplainedHours
    ]
):
    """What `explain --json` prints; which block it is shows by its second key."""
