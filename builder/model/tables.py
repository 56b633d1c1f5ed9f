"""Published tables: severity from a measure, phase from clock and signs, and the list of sources."""

from __future__ import annotations

import re
from typing import Literal, Self

from pydantic import Field, model_validator

from builder.model.card import Aim, Contested, Phase, Reviewed
from builder.model.condition import Among, Condition, Within
from builder.model.noun import Format, Hours, Id, Noun, Strength, Text, Truth

Severity = Literal["mild", "moderate", "severe"]
SEVERITIES: tuple[Severity, ...] = ("mild", "moderate", "severe")
Tissue = Literal["muscle", "ligament", "tendon"]


class Band(Noun):
    """One grade of a severity table: the measure that earns it."""

    grade: Severity = Field(description="The grade this band gives.", examples=["moderate"])
    when: Condition = Field(
        description="The measure that earns it.", examples=[{"knee_flexion": {"below": 90}}]
    )


class SeverityTable(Noun):
    """A published table that grades an injury from one measure taken within a window of hours."""

    applies: Condition = Field(
        description="For whom it was published.", examples=[{"injury": "contusion", "region": "thigh"}]
    )
    measure: Id = Field(description="The fact that is measured.", examples=["knee_flexion"])
    recalled: Id | None = Field(
        default=None,
        description="The same measure, known from a record of that window.",
        examples=["knee_flexion_first_day"],
    )
    not_before: Hours = Field(description="The window opens this long after the injury.", examples=["12 h"])
    not_after: Hours = Field(description="The window closes this long after the injury.", examples=["24 h"])
    least: Truth = Field(
        default=False,
        description="It says only how bad at least: a worse declared grade stands, and after the window "
        "the declared grade does.",
        examples=["yes"],
    )
    bands: tuple[Band, ...] = Field(
        description="Grades by the measure, without overlap or gap.",
        examples=[[{"grade": "mild", "when": {"knee_flexion": {"over": 90}}}]],
    )
    raised: tuple[Band, ...] = Field(
        default=(),
        description="Further findings, of any day, that make it at least this bad; only beside `least`.",
        examples=[[{"grade": "severe", "when": {"muscle_gap": "yes"}}]],
    )
    source: tuple[Id, ...] = Field(
        description="What it rests on: ids of `content/references.yml`.", examples=[["ryan1991"]]
    )
    note: Text | None = Field(
        default=None,
        description="What else has to be known when it is used.",
        examples=["Studied on young adults."],
    )
    reviewed: Reviewed | None = Field(
        default=None,
        description="Which clinician has looked at it; empty until one has.",
        examples=[{"who": "Isaura Penhallow", "licence": "Physician, MF 2210", "date": "2026-11-25"}],
    )

    @model_validator(mode="after")
    def _graded_by_its_measure(self) -> Self:
        bounded = {one.when.name if isinstance(one.when, Among | Within) else None for one in self.bands}
        if len(bounded) > 1 or None in bounded:
            raise ValueError("each band bounds the measure alone; other findings go under `raised`")
        if self.raised and not self.least:
            raise ValueError("`raised` can only stand beside `least: yes`")
        return self


class BackgroundRow(Noun):
    """One line of a background list: a grade or an item, how it reads, and its bounds where it has some."""

    name: Text = Field(description="The grade or item.", examples=["Grade I"])
    text: Text = Field(description="How it reads.", examples=["A few fibres torn."])
    when: Condition | None = Field(
        default=None, description="Bounds of what a clinician reports.", examples=[{"image_grade": 1}]
    )
    points: int | None = Field(default=None, description="Its points, where it is a score.", examples=[1])


class Background(Noun):
    """A published grading or score that clinicians use and report: taught, never worked out for a client."""

    title: Text = Field(
        description="The list as it is headed.", examples=["Grades of muscle injury on images"]
    )
    people: Text | None = Field(
        default=None, description="On whom it was studied.", examples=["Professional footballers"]
    )
    rows: tuple[BackgroundRow, ...] = Field(
        min_length=1, description="Its lines.", examples=[[{"name": "Grade I", "text": "A few fibres torn."}]]
    )
    source: tuple[Id, ...] = Field(
        min_length=1,
        description="What it rests on: ids of `content/references.yml`.",
        examples=[["ryan1991"]],
    )
    strength: Strength = Field(description="How strong the source is.", examples=["review"])
    contested: Contested | None = Field(
        default=None,
        description="Where teaching and literature differ: both sides.",
        examples=[{"point": "cold_heals", "taught": "Cold speeds healing.", "other": "Not shown."}],
    )
    note: Text | None = Field(
        default=None,
        description="What else has to be known when it is taught.",
        examples=["Reported by a clinician, never ours."],
    )
    reviewed: Reviewed | None = Field(
        default=None,
        description="Which clinician has looked at it; empty until one has.",
        examples=[{"who": "Isaura Penhallow", "licence": "Physician, MF 2210", "date": "2026-11-25"}],
    )


class Clock(Noun):
    """When each phase ends by the calendar, for a tissue and severity; the end itself belongs to it."""

    tissue: Tissue = Field(description="For which tissue.", examples=["muscle"])
    severity: Severity = Field(description="For which severity.", examples=["moderate"])
    acute_until: Hours = Field(description="The last hour of the acute phase.", examples=["72 h"])
    early_repair_until: Hours = Field(description="The last hour of early repair.", examples=["10 days"])
    late_repair_until: Hours = Field(description="The last hour of late repair.", examples=["3 weeks"])
    source: tuple[Id, ...] = Field(
        description="What it rests on: ids of `content/references.yml`.", examples=[["own_default"]]
    )


class Sign(Noun):
    """A sign that holds the phase back: while it is there the phase is no later than `no_later_than`."""

    id: Id = Field(description="A short name.", examples=["swelling_rising"])
    when: Condition = Field(description="The sign.", examples=[{"swelling_trend": "rising"}])
    no_later_than: Phase = Field(
        description="The latest phase there can be while the sign is there.", examples=["acute"]
    )
    text: Text = Field(
        description="The sign in a sentence, for the learner.",
        examples=["Swelling that is going up means acute, whatever the date."],
    )
    source: tuple[Id, ...] = Field(
        description="What it rests on: ids of `content/references.yml`.", examples=[["common_practice"]]
    )
    strength: Strength = Field(description="How strong the source is.", examples=["common_practice"])


class PhaseBook(Noun):
    """`content/phases.yml`: clocks, signs, where phase does not apply, and the aim of each phase."""

    format: Format
    does_not_apply: Condition = Field(
        description="Where phase does not apply.", examples=[{"injury": ["tendinopathy", "soreness"]}]
    )
    clocks: tuple[Clock, ...] = Field(
        description="When each phase ends by the calendar.",
        examples=[
            [
                {
                    "tissue": "muscle",
                    "severity": "mild",
                    "acute_until": "48 h",
                    "early_repair_until": "6 days",
                    "late_repair_until": "2 weeks",
                    "source": ["own_default"],
                }
            ]
        ],
    )
    signs: tuple[Sign, ...] = Field(
        description="Signs that hold the phase back.",
        examples=[
            [
                {
                    "id": "warm",
                    "when": {"heat": "clear"},
                    "no_later_than": "acute",
                    "text": "Clear warmth means acute.",
                    "source": ["common_practice"],
                    "strength": "common_practice",
                }
            ]
        ],
    )
    doubt: tuple[Sign, ...] = Field(
        default=(),
        description="Signs ahead of the calendar: said, never refers.",
        examples=[
            [
                {
                    "id": "too_early",
                    "when": {"tissue_feel": "fibrous"},
                    "no_later_than": "late_repair",
                    "text": "This is early for a firm band.",
                    "source": ["own_default"],
                    "strength": "common_practice",
                }
            ]
        ],
    )
    aims: dict[Phase, Aim] = Field(
        description="What treatment is for in each phase.", examples=[{"acute": "limit"}]
    )
    aim_words: dict[Aim, Text] = Field(
        description="How each aim reads.", examples=[{"limit": "limit the injury"}]
    )
    phase_words: dict[Phase, Text] = Field(
        description="How each phase reads.", examples=[{"early_repair": "early repair (subacute)"}]
    )
    source: tuple[Id, ...] = Field(
        description="What the aims rest on: ids of `content/references.yml`.", examples=[["own_default"]]
    )
    reviewed: Reviewed | None = Field(
        default=None,
        description="Which clinician has looked at it; empty until one has.",
        examples=[{"who": "Isaura Penhallow", "licence": "Physician, MF 2210", "date": "2026-11-25"}],
    )


class SeverityBook(Noun):
    """`content/severity.yml`: the published severity tables, how a grade reads, and what is only taught."""

    format: Format
    words: dict[Severity, Text] = Field(description="How each grade reads.", examples=[{"mild": "mild"}])
    tables: dict[Id, SeverityTable] = Field(
        description="The published tables, by a short name.",
        examples=[
            {
                "thigh": {
                    "applies": {"region": "thigh"},
                    "measure": "knee_flexion",
                    "not_before": "12 h",
                    "not_after": "24 h",
                    "bands": [{"grade": "mild", "when": {"knee_flexion": {"over": 90}}}],
                    "source": ["ryan1991"],
                }
            }
        ],
    )
    background: dict[Id, Background] = Field(
        default_factory=dict,
        description="Gradings and scores that are only taught, by a short name.",
        examples=[
            {
                "images": {
                    "title": "Grades on images",
                    "rows": [{"name": "I", "text": "A few fibres."}],
                    "source": ["ryan1991"],
                    "strength": "review",
                }
            }
        ],
    )


class Reference(Noun):
    """One source: its citation, and its year where it has one."""

    cite: Text = Field(
        description="The source as it is printed: author, year, title, where.",
        examples=["Loew LM 2014. Deep transverse friction massage. Cochrane review"],
    )
    year: int | None = Field(
        default=None, description="Its year; leave it out where there is none.", examples=[2014]
    )

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
    sources: dict[Id, Reference] = Field(
        description="The sources, by a short name.",
        examples=[{"loew2014": {"cite": "Loew LM 2014. Deep transverse friction massage.", "year": 2014}}],
    )
