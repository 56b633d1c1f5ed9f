"""Cards: one technique or action each, with its sourced answer for every phase and site."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal

from pydantic import Field

from builder.model.condition import Limits
from builder.model.noun import Format, Id, Noun, Strength, Text

Phase = Literal["acute", "early_repair", "late_repair", "remodelling", "none"]
Site = Literal["on", "adjacent", "proximal", "distal", "remote"]
Answer = Literal["ok", "change", "not_yet", "barred"]
Aim = Literal["limit", "clear", "restore", "ease", "ask", "refer"]

PHASES: tuple[Phase, ...] = ("acute", "early_repair", "late_repair", "remodelling", "none")
SITES: tuple[Site, ...] = ("on", "adjacent", "proximal", "distal", "remote")
ANSWERS: tuple[Answer, ...] = ("ok", "change", "not_yet", "barred")


class Contested(Noun):
    """A point on which teaching and literature differ: both sides, and its id for a course's position."""

    point: Id
    taught: Text
    other: Text


class Reviewed(Noun):
    """Which clinician has looked at this, with which licence, and when."""

    who: Text
    licence: Text
    date: Text


class CellRow(Noun):
    """One answer of the baseline grid, for the phases and sites it names."""

    phase: tuple[Phase, ...]
    site: tuple[Site, ...] = SITES
    answer: Literal["ok", "not_yet", "barred"]
    limits: Limits = Field(default_factory=dict, description="What the option must have written.")
    why: Text
    source: tuple[Id, ...] = Field(min_length=1)
    strength: Strength
    contested: Contested | None = None


HOLE = CellRow(
    phase=PHASES,
    answer="barred",
    why="The card says nothing of this phase and site.",
    source=("own_default",),
    strength="common_practice",
)


class Evidence(Noun):
    """What speaks for a technique and what against it."""

    speaks_for: Text
    speaks_against: Text


class Card(Noun):
    """One technique, or one action that is no technique."""

    format: Format
    id: Id
    name: Text
    kind: Literal["technique", "action"]
    hands_on: bool
    groups: tuple[Id, ...] = Field(default=(), description="Names by which rules address it.")
    serves: tuple[Aim, ...] = Field(min_length=1, description="The aims of the day it serves.")
    what: Text
    stroke: Literal["along", "across", "circles", "lift_and_roll", "still", "none"] = "none"
    who_moves: Literal["therapist", "client", "both", "nobody"] = "nobody"
    muscle: Literal["slack", "shortening", "lengthening", "contracting", "any"] = "any"
    order: int | None = Field(
        default=None, description="Order of invasiveness in remodelling, 1 is the mildest."
    )
    usual: dict[Id, str | Decimal] = Field(default_factory=dict, description="How it is usually written.")
    ladder: dict[Id, tuple[Decimal, ...]] = Field(
        default_factory=dict, description="Doses a dose question offers."
    )
    baseline: tuple[CellRow, ...]
    stop_if: tuple[Text, ...] = ()
    cautions: tuple[Text, ...] = ()
    licence: Text | None = None
    evidence: Evidence | None = None
    reviewed: Reviewed | None = None

    def cell(self, phase: Phase, site: Site) -> CellRow:
        """The baseline row for one phase and site; a hole in the grid bars."""
        return next((row for row in self.baseline if phase in row.phase and site in row.site), HOLE)


def site_of(written: object) -> Site:
    """The site a card is written for; on the injury where nothing is written."""
    return next((site for site in SITES if site == written), "on")
