"""Signatures: they hold for what was read, and for nothing that has changed since."""

import pytest
from pydantic import ValidationError

from builder.model.card import Card
from builder.model.review import ReviewBook, Signed, fingerprint, signed_card, signed_rule
from builder.model.rule import Rule
from tests.judge.small import CARDS, RULES

RULE, CARD = Rule.model_validate(RULES[0]), Card.model_validate(CARDS[0])
WHO = {"who": "A clinician", "licence": "None real", "date": "2026-11-01"}


def book(**parts: object) -> ReviewBook:
    """A file of signatures."""
    return ReviewBook.model_validate({"format": 1, **parts})


def test_a_signature_reviews_what_it_was_given_for() -> None:
    """Rule and card carry who, licence and date."""
    made = book(
        rules={RULE.id: {**WHO, "fingerprint": fingerprint(RULE)}},
        cards={CARD.id: {**WHO, "fingerprint": fingerprint(CARD)}},
    )
    rule, card = signed_rule(RULE, made).reviewed, signed_card(CARD, made).reviewed
    assert rule is not None
    assert rule == card
    assert rule.model_dump() == WHO
    assert RULE.reviewed is None


def test_a_signature_is_void_where_the_content_has_changed() -> None:
    """Another word in the rule, another fingerprint."""
    made = book(rules={RULE.id: {**WHO, "fingerprint": fingerprint(RULE)}})
    changed = RULE.model_copy(update={"why": "Another reason."})
    assert signed_rule(changed, made) is changed
    assert signed_card(CARD, made) is CARD


def test_a_signature_changes_no_fingerprint() -> None:
    """What is signed stays what it is when it carries the signature."""
    made = book(rules={RULE.id: {**WHO, "fingerprint": fingerprint(RULE)}})
    assert fingerprint(signed_rule(RULE, made)) == fingerprint(RULE)


def test_a_date_is_a_date() -> None:
    """Nothing else is taken for one."""
    with pytest.raises(ValidationError):
        Signed.model_validate({**WHO, "date": "soon", "fingerprint": "a"})
