"""Cards: one technique or action each, with its sourced answer for every phase and site."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal

from pydantic import Field

from builder.model.condition import Limits
from builder.model.noun import Format, Id, Noun, Strength, Text, Truth

Phase = Literal["acute", "early_repair", "late_repair", "remodelling", "none"]
Site = Literal["on", "adjacent", "proximal", "distal", "remote"]
Answer = Literal["ok", "change", "not_yet", "barred"]
Aim = Literal["limit", "clear", "restore", "ease", "ask", "refer"]

PHASES: tuple[Phase, ...] = ("acute", "early_repair", "late_repair", "remodelling", "none")
SITES: tuple[Site, ...] = ("on", "adjacent", "proximal", "distal", "remote")
ANSWERS: tuple[Answer, ...] = ("ok", "change", "not_yet", "barred")


class Contested(Noun):
    """A point on which teaching and literature differ: both sides, and its id for a course's position."""

    point: Id = Field(
        description="A short name for the point; a course takes its side under `positions`.",
        examples=["cold_heals"],
    )
    taught: Text = Field(description="What is commonly taught.", examples=["Cold speeds healing."])
    other: Text = Field(
        description="What speaks on the other side.", examples=["It eases pain; faster repair is not shown."]
    )


class Reviewed(Noun):
    """Which clinician has looked at this, with which licence, and when."""

    who: Text = Field(description="The clinician who has looked at it.", examples=["Isaura Penhallow"])
    licence: Text = Field(description="The clinician's licence.", examples=["Physician, MF 2210"])
    date: Text = Field(description="The day of the review.", examples=["2026-11-25"])


class CellRow(Noun):
    """One answer of the baseline grid, for the phases and sites it names."""

    phase: tuple[Phase, ...] = Field(
        description="The phases this line answers for.", examples=[["acute", "early_repair"]]
    )
    site: tuple[Site, ...] = Field(
        default=SITES,
        description="Where it answers for, seen from the injury; everywhere if left out.",
        examples=[["on", "adjacent"]],
    )
    answer: Literal["ok", "not_yet", "barred"] = Field(
        description="What the card says there.", examples=["not_yet"]
    )
    limits: Limits = Field(
        default_factory=dict,
        description="What the option must have written: each attribute with its bounds.",
        examples=[{"minutes": {"at_most": 20}, "barrier": "yes"}],
    )
    why: Text = Field(
        description="The reason, for the learner.", examples=["A stroke can start the bleeding again."]
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


HOLE = CellRow(
    phase=PHASES,
    answer="barred",
    why="The card says nothing of this phase and site.",
    source=("own_default",),
    strength="common_practice",
)


class Evidence(Noun):
    """What speaks for a technique and what against it."""

    speaks_for: Text = Field(description="What speaks for it.", examples=["Short relief of pain."])
    speaks_against: Text = Field(
        description="What speaks against it.", examples=["No proof of faster healing."]
    )


class Card(Noun):
    """One technique, or one action that is no technique."""

    format: Format
    id: Id = Field(
        description="The name of the card, the same as the name of its file.", examples=["cold_pack"]
    )
    name: Text = Field(description="The card as it is headed.", examples=["Cold pack"])
    kind: Literal["technique", "action"] = Field(
        description="A technique, or an action that is no technique.", examples=["technique"]
    )
    hands_on: Truth = Field(description="Whether hands work on the client.", examples=["no"])
    alongside: Truth = Field(
        default=False,
        description="Whether it may be done beside anything, so that it is a wrong answer on no day.",
        examples=["yes"],
    )
    groups: tuple[Id, ...] = Field(
        default=(), description="Families by which rules address it.", examples=[["cold"]]
    )
    serves: tuple[Aim, ...] = Field(
        min_length=1, description="The aims of the day it serves.", examples=[["limit", "ease"]]
    )
    what: Text = Field(
        description="What it is, in a sentence.",
        examples=["A wrapped pack, laid on the injury for a set time."],
    )
    stroke: Literal[
        "along", "across", "circles", "lift_and_roll", "still", "taps", "apart", "swing", "none"
    ] = Field(
        default="none",
        description="Which way the hand goes or the limb moves, for its figure.",
        examples=["across"],
    )
    who_moves: Literal["therapist", "client", "both", "nobody"] = Field(
        default="nobody", description="Who moves during it.", examples=["client"]
    )
    muscle: Literal["slack", "shortening", "lengthening", "contracting", "any"] = Field(
        default="any", description="What the muscle does meanwhile.", examples=["slack"]
    )
    order: int | None = Field(
        default=None, description="Its place among the strokes of remodelling, 1 the mildest.", examples=[2]
    )
    usual: dict[Id, str | Decimal] = Field(
        default_factory=dict,
        description="How it is usually written.",
        examples=[{"minutes": 20, "barrier": "yes"}],
    )
    ladder: dict[Id, tuple[Decimal, ...]] = Field(
        default_factory=dict,
        description="Doses that a dose question offers.",
        examples=[{"minutes": [5, 10, 20, 30]}],
    )
    baseline: tuple[CellRow, ...] = Field(
        description="The answer for every phase and site; each needs exactly one line.",
        examples=[
            [
                {
                    "phase": ["acute"],
                    "answer": "barred",
                    "why": "It may bleed again.",
                    "source": ["common_practice"],
                    "strength": "common_practice",
                }
            ]
        ],
    )
    stop_if: tuple[Text, ...] = Field(
        default=(), description="What ends it at once.", examples=[["The skin goes white or numb"]]
    )
    cautions: tuple[Text, ...] = Field(
        default=(), description="What to mind.", examples=[["Ask about cold-sensitive fingers first"]]
    )
    licence: Text | None = Field(
        default=None,
        description="The licence it needs, where it needs one of its own.",
        examples=["Only where the licence covers it."],
    )
    evidence: Evidence | None = Field(
        default=None,
        description="What speaks for it and what against.",
        examples=[{"speaks_for": "Short relief of pain.", "speaks_against": "No proof of faster healing."}],
    )
    reviewed: Reviewed | None = Field(
        default=None,
        description="Which clinician has looked at it; empty until one has.",
        examples=[{"who": "Isaura Penhallow", "licence": "Physician, MF 2210", "date": "2026-11-25"}],
    )

    @property
    def drawn(self) -> bool:
        """Whether it has a figure: of a stroke, or of a wrap with where it starts and ends."""
        return self.stroke != "none" or {"wrap_from", "wrap_to"} <= self.usual.keys()

    def cell(self, phase: Phase, site: Site) -> CellRow:
        """The baseline row for one phase and site; a hole in the grid bars."""
        return next((row for row in self.baseline if phase in row.phase and site in row.site), HOLE)


def groups_of(card: Card) -> set[str]:
    """Every group by which rules may address a card."""
    given = set(card.groups)
    if card.hands_on:
        given.add("hands_on")
    if card.kind == "technique":
        given.add("techniques")
    if not set(card.serves) <= {"ask", "refer"}:
        given.add("all")
    return given


def site_of(written: object) -> Site:
    """The site a card is written for; on the injury where nothing is written."""
    return next((site for site in SITES if site == written), "on")
