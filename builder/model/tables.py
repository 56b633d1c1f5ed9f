"""Published tables: severity from a measure, phase from clock and signs, and the list of sources."""

from __future__ import annotations

import re
from typing import Literal

from pydantic import Field

from builder.model.card import Aim, Contested, Phase
from builder.model.condition import Condition
from builder.model.noun import Format, Hours, Id, Noun, Strength, Text

Severity = Literal["mild", "moderate", "severe"]
SEVERITIES: tuple[Severity, ...] = ("mild", "moderate", "severe")
Tissue = Literal["muscle", "ligament", "tendon"]


class Band(Noun):
    """One grade of a severity table: the measure that earns it."""

    grade: Severity
    when: Condition


class SeverityTable(Noun):
    """A published table that grades an injury from one measure taken within a window of hours."""

    applies: Condition
    measure: Id
    recalled: Id | None = Field(
        default=None, description="The same measure, known from a record of that window."
    )
    not_before: Hours
    not_after: Hours
    least: bool = Field(
        default=False,
        description="It says only how bad at least: a worse declared grade stands, and after the window the "
        "declared grade does.",
    )
    bands: tuple[Band, ...]
    raised: tuple[Band, ...] = Field(
        default=(),
        description="Further findings, of any day, that make it at least this bad; only beside `least`.",
    )
    source: tuple[Id, ...]
    note: Text | None = None


class BackgroundRow(Noun):
    """One line of a background list: a grade or an item, how it reads, and its bounds where it has some."""

    name: Text
    text: Text
    when: Condition | None = Field(default=None, description="Bounds of what a clinician reports.")
    points: int | None = None


class Background(Noun):
    """A published grading or score that clinicians use and report: taught, never worked out for a client."""

    title: Text
    people: Text | None = Field(default=None, description="On whom it was studied.")
    rows: tuple[BackgroundRow, ...] = Field(min_length=1)
    source: tuple[Id, ...] = Field(min_length=1)
    strength: Strength
    contested: Contested | None = None
    note: Text | None = None


class Clock(Noun):
    """When each phase ends by the calendar, for a tissue and severity; the end itself belongs to it."""

    tissue: Tissue
    severity: Severity
    acute_until: Hours
    early_repair_until: Hours
    late_repair_until: Hours
    source: tuple[Id, ...]


class Sign(Noun):
    """A sign that holds the phase back: while it is there the phase is no later than `no_later_than`."""

    id: Id
    when: Condition
    no_later_than: Phase
    text: Text
    source: tuple[Id, ...]
    strength: Strength


class PhaseBook(Noun):
    """`content/phases.yml`: clocks, signs, where phase does not apply, and the aim of each phase."""

    format: Format
    does_not_apply: Condition
    clocks: tuple[Clock, ...]
    signs: tuple[Sign, ...]
    doubt: tuple[Sign, ...] = Field(
        default=(), description="Signs ahead of the calendar: said, never refers."
    )
    aims: dict[Phase, Aim]
    aim_words: dict[Aim, Text]
    phase_words: dict[Phase, Text]
    source: tuple[Id, ...]


class SeverityBook(Noun):
    """`content/severity.yml`: the published severity tables, how a grade reads, and what is only taught."""

    format: Format
    words: dict[Severity, Text]
    tables: dict[Id, SeverityTable]
    background: dict[Id, Background] = Field(default_factory=dict)


class Reference(Noun):
    """One source: its citation, and its year where it has one."""

    cite: Text
    year: int | None = None

    @property
    def short(self) -> str:
        """The citation up to its first stop, with the year; whole where there is no year."""
        if self.year is None:
            return self.cite
        head = re.split(r"\. |; |\(", self.cite, maxsplit=1)[0].strip()
        return head if str(self.year) in head else f"{head}, {self.year}"


class ReferenceBook(Noun):
    """`content/references.yml`: every source that content may name."""

    format: Format
    sources: dict[Id, Reference]
