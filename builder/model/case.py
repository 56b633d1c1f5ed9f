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

    role: Text = Field(description="Work or sport; no name.", examples=["Acrobat base"])
    age: int = Field(ge=0, le=120, description="Age in years.", examples=[26])
    goals: Text | None = Field(
        default=None,
        description="What the client wants to do again.",
        examples=["To ride in the closing parade"],
    )


class InjuredTissue(Noun):
    """The tissue that is hurt."""

    kind: Tissue = Field(description="Which sort of tissue.", examples=["muscle"])
    name: Text = Field(description="The tissue as a therapist names it.", examples=["front of the thigh"])
    region: Id = Field(description="Where it is: a value of the fact `region`.", examples=["thigh"])
    side: Literal["left", "right", "both", "middle"] = Field(description="Which side.", examples=["left"])
    haematoma: Literal["intramuscular", "intermuscular"] | None = Field(
        default=None, description="Where the bleeding stayed, where it is known.", examples=["intermuscular"]
    )


class Screen(Noun):
    """A screening set that was asked, all answered no except those named."""

    set: Id = Field(
        description="The screening set that was asked, question by question.",
        examples=["lower_limb_with_cold"],
    )
    all_no_except: dict[Id, Written] = Field(
        default_factory=dict,
        description="Answers other than no; `{}` where every answer was no.",
        examples=[{"raynaud": "yes"}],
    )


class CaseOption(Noun):
    """A card as written: where, how much, with what preparation."""

    card: Id = Field(description="The technique or action: the id of a card.", examples=["cold_pack"])
    site: Site = Field(
        default="on", description="Where it is done, seen from the injury.", examples=["proximal"]
    )
    written: dict[Id, Written] = Field(
        default_factory=dict,
        description="Dose and preparation, as written.",
        examples=[{"minutes": 20, "barrier": "yes"}],
    )
    because: Text | None = Field(
        default=None,
        description="The author's own word beside the rules' reasons.",
        examples=["Here the warmth alone would decide."],
    )


class Visit(Noun):
    """What is found and decided on one day."""

    id: Id = Field(description="A name for the visit, once in a case.", examples=["next_morning"])
    title: Text = Field(description="The visit as it is headed.", examples=["The next morning"])
    since_injury: Hours = Field(
        description="Time since the first injury: `14 h`, `6 days` or `3 weeks`.", examples=["14 h"]
    )
    since_reinjury: Hours | None = Field(
        default=None, description="Time since it was last hurt again, if it was.", examples=["20 h"]
    )
    story: Text | None = Field(
        default=None, description="What the client says today.", examples=["It stiffened overnight."]
    )
    consent: Literal["yes", "no"] | None = Field(
        default=None,
        description="Whether the client agreed to the work; leave it out where nobody asked.",
        examples=["yes"],
    )
    screen: Screen | None = Field(
        default=None,
        description="The screening that was done; leave it out where none was.",
        examples=[{"set": "lower_limb_with_cold", "all_no_except": {}}],
    )
    findings: dict[Id, Written] = Field(
        default_factory=dict,
        description="What was seen, felt, measured or asked today: facts and their values.",
        examples=[{"heat": "clear", "rest_pain": 4}],
    )
    phase: Phase = Field(
        description="The phase of healing you say it is; the rules work it out beside you.",
        examples=["acute"],
    )
    severity: Severity | None = Field(
        default=None,
        description="How bad it is, where it differs from the case's own.",
        examples=["moderate"],
    )
    chosen: tuple[CaseOption, ...] = Field(
        min_length=1,
        description="What is right today: every option here must be OK as written.",
        examples=[[{"card": "elevate", "written": {}}]],
    )
    wrong: tuple[CaseOption, ...] = Field(
        default=(),
        description="What is worth offering and wrong, each for a reason the rules know.",
        examples=[[{"card": "heat", "written": {"minutes": 15}}]],
    )
    next: Text | None = Field(
        default=None,
        description="What happened to the client next.",
        examples=["By the fourth day it felt good."],
    )


class Case(Noun):
    """One client and injury, with visits in order."""

    format: Format
    id: Id = Field(
        description="The name of the case, the same as the name of its file.", examples=["unicycle_thigh"]
    )
    title: Text = Field(description="The case as it is headed.", examples=["The falling unicycle"])
    invented: Literal["yes"] = Field(
        default="yes",
        description="That it is invented or anonymised; nothing else may be taught.",
        examples=["yes"],
    )
    objectives: tuple[Id, ...] = Field(
        min_length=1, description="The objectives of the course it is for.", examples=[["phase", "choose"]]
    )
    client: Client = Field(
        description="Who the client is, as far as it matters.", examples=[{"role": "Unicyclist", "age": 26}]
    )
    mechanism: Text = Field(
        description="How it happened.", examples=["The saddle post struck the front of the thigh."]
    )
    injury: Id = Field(
        description="What happened to the tissue: a value of the fact `injury`.", examples=["contusion"]
    )
    tissue: InjuredTissue = Field(
        description="What is hurt.",
        examples=[{"kind": "muscle", "name": "calf", "region": "calf", "side": "left"}],
    )
    severity: Severity | None = Field(
        default=None, description="How bad it is, where no published table can tell.", examples=["moderate"]
    )
    history: dict[Id, Written] = Field(
        default_factory=dict,
        description="Facts that hold on every visit.",
        examples=[{"anticoagulant": "no"}],
    )
    visits: tuple[Visit, ...] = Field(
        min_length=1,
        description="The visits, the first one first.",
        examples=[
            [
                {
                    "id": "v1",
                    "title": "The first day",
                    "since_injury": "5 h",
                    "phase": "acute",
                    "chosen": [{"card": "refer"}],
                }
            ]
        ],
    )
