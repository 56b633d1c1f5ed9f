"""Cases: one client and injury, followed over visits; an author's file, taken as written."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal

from pydantic import Field

from builder.model.card import Phase, Site
from builder.model.noun import Format, Hours, Id, Noun, Text
from builder.model.tables import Severity, Tissue

Written = str | Decimal


class Client(Noun):
    """Who the client is, as far as it matters; invented or anonymised."""

    role: Text = Field(description="Work or sport, such as `Acrobat base`.")
    age: int = Field(ge=0, le=120)
    goals: Text | None = None


class InjuredTissue(Noun):
    """The tissue that is hurt."""

    kind: Tissue
    name: Text
    region: Id
    side: Literal["left", "right", "both", "middle"]
    haematoma: Literal["intramuscular", "intermuscular"] | None = None


class Screen(Noun):
    """A screening set that was asked, all answered no except those named."""

    set: Id
    all_no_except: dict[Id, Written] = Field(default_factory=dict)


class CaseOption(Noun):
    """A card as written: where, how much, with what preparation."""

    card: Id
    site: Site = "on"
    written: dict[Id, Written] = Field(default_factory=dict, description="Dose and preparation, as written.")
    because: Text | None = Field(default=None, description="The author's own word beside the rules' reasons.")


class Visit(Noun):
    """What is found and decided on one day."""

    id: Id
    title: Text
    since_injury: Hours
    since_reinjury: Hours | None = None
    story: Text | None = Field(default=None, description="What the client says today.")
    consent: Literal["yes", "no"] | None = None
    screen: Screen | None = None
    findings: dict[Id, Written] = Field(default_factory=dict)
    phase: Phase
    severity: Severity | None = None
    chosen: tuple[CaseOption, ...] = Field(min_length=1)
    wrong: tuple[CaseOption, ...] = ()
    next: Text | None = Field(default=None, description="What happened to the client next.")


class Case(Noun):
    """One client and injury, with visits in order."""

    format: Format
    id: Id
    title: Text
    invented: Literal["yes"] = Field(default="yes", description="A case is invented or anonymised.")
    objectives: tuple[Id, ...] = Field(min_length=1)
    client: Client
    mechanism: Text
    injury: Id = Field(description="A value of the fact `injury`, such as contusion.")
    tissue: InjuredTissue
    severity: Severity | None = None
    history: dict[Id, Written] = Field(default_factory=dict, description="Facts that hold on every visit.")
    visits: tuple[Visit, ...] = Field(min_length=1)
