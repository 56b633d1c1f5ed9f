"""`reviews.yml`: which clinician has looked at which rule and card, and at which wording of it."""

from __future__ import annotations

import hashlib
from datetime import date

from pydantic import Field

from builder.model.card import Card, Reviewed
from builder.model.noun import Format, Id, Noun, Text
from builder.model.rule import Rule

SHOWN = 12


class Signed(Noun):
    """One signature: who, with which licence, when, and the fingerprint of what was read."""

    who: Text
    licence: Text
    date: date
    fingerprint: Text = Field(description="As the printed list shows it.")

    def holds_for(self, noun: Rule | Card) -> bool:
        """Whether what was signed is still what stands there."""
        return self.fingerprint == fingerprint(noun)

    def reviewed(self) -> Reviewed:
        """The signature as rules and cards carry it."""
        return Reviewed(who=self.who, licence=self.licence, date=self.date.isoformat())


class ReviewBook(Noun):
    """Every signature of a course, by the id of the rule or card."""

    format: Format
    rules: dict[Id, Signed] = Field(default_factory=dict)
    cards: dict[Id, Signed] = Field(default_factory=dict)


def fingerprint(noun: Rule | Card) -> str:
    """The fingerprint of all that a rule or card says, whatever has been signed of it before."""
    whole = noun.model_dump_json(exclude={"reviewed"})
    return hashlib.sha256(whole.encode("utf-8")).hexdigest()[:SHOWN]


def signed_rule(rule: Rule, book: ReviewBook) -> Rule:
    """The rule with its signature, where one holds for it as it stands."""
    signed = book.rules.get(rule.id)
    if signed is None or not signed.holds_for(rule):
        return rule
    return rule.model_copy(update={"reviewed": signed.reviewed()})


def signed_card(card: Card, book: ReviewBook) -> Card:
    """The card with its signature, where one holds for it as it stands."""
    signed = book.cards.get(card.id)
    if signed is None or not signed.holds_for(card):
        return card
    return card.model_copy(update={"reviewed": signed.reviewed()})
