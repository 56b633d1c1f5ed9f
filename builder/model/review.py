"""`reviews.yml`: which clinician has looked at which part of the content, and at which wording of it."""

from __future__ import annotations

import hashlib
from typing import TypeVar

from pydantic import Field

from builder.model.card import Card, Reviewed
from builder.model.noun import Day, Format, Id, Noun, Text
from builder.model.rule import Rule
from builder.model.tables import Background, PhaseBook, SeverityTable

SHOWN = 12
Reviewable = Rule | Card | PhaseBook | SeverityTable | Background
R = TypeVar("R", Rule, Card, PhaseBook, SeverityTable, Background)


class Signed(Noun):
    """One signature: who, with which licence, when, and the fingerprint of what was read."""

    who: Text = Field(description="The clinician who read it.", examples=["Isaura Penhallow"])
    licence: Text = Field(description="The clinician's licence.", examples=["Physician, MF 2210"])
    date: Day = Field(description="The day of the signature.", examples=["2026-11-25"])
    fingerprint: Text = Field(
        description="The fingerprint of what was read, as the printed list shows it.",
        examples=["3f9ac02b71de"],
    )

    def holds_for(self, noun: Reviewable) -> bool:
        """Whether what was signed is still what stands there."""
        return self.fingerprint == fingerprint(noun)

    def reviewed(self) -> Reviewed:
        """The signature as what was signed carries it."""
        return Reviewed(who=self.who, licence=self.licence, date=self.date.isoformat())


EXAMPLE = {
    "who": "Isaura Penhallow",
    "licence": "Physician, MF 2210",
    "date": "2026-11-25",
    "fingerprint": "3f9ac02b71de",
}


class ReviewBook(Noun):
    """Every signature of a course, by the id of what was signed."""

    format: Format
    rules: dict[Id, Signed] = Field(
        default_factory=dict,
        description="Signatures by the id of the rule.",
        examples=[{"fever_today": EXAMPLE}],
    )
    cards: dict[Id, Signed] = Field(
        default_factory=dict, description="Signatures by the id of the card.", examples=[{"glide": EXAMPLE}]
    )
    phases: dict[Id, Signed] = Field(
        default_factory=dict,
        description="Only `all`: clocks and signs are one thing.",
        examples=[{"all": EXAMPLE}],
    )
    severity: dict[Id, Signed] = Field(
        default_factory=dict, description="By severity table.", examples=[{"thigh_contusion": EXAMPLE}]
    )
    background: dict[Id, Signed] = Field(
        default_factory=dict, description="By background list.", examples=[{"clot_score": EXAMPLE}]
    )


def fingerprint(noun: Reviewable) -> str:
    """The fingerprint of all that a part of the content says, whatever has been signed of it before."""
    whole = noun.model_dump_json(exclude={"reviewed"})
    return hashlib.sha256(whole.encode("utf-8")).hexdigest()[:SHOWN]


def signed(noun: R, signature: Signed | None) -> R:
    """The same with its signature, where one holds for it as it stands."""
    if signature is None or not signature.holds_for(noun):
        return noun
    return noun.model_copy(update={"reviewed": signature.reviewed()})
