"""Signatures: they hold for what was read, and for nothing that has changed since."""

import pytest
from pydantic import ValidationError

from builder.model.card import Card
from builder.model.review import Reviewable, Signed, fingerprint, signed
from builder.model.rule import Rule
from tests.judge.small import CARDS, RULES, content

RULE, CARD = Rule.model_validate(RULES[0]), Card.model_validate(CARDS[0])
PHASES, TABLE = content().phases, next(iter(content().severity.tables.values()))
WHO = {"who": "A clinician", "licence": "None real", "date": "2026-11-01"}
EACH = pytest.mark.parametrize("noun", [RULE, CARD, PHASES, TABLE], ids=["rule", "card", "phases", "table"])


def by(noun: Reviewable) -> Signed:
    """A signature for what stands there now."""
    return Signed.model_validate({**WHO, "fingerprint": fingerprint(noun)})


def test_a_signature_reviews_what_it_was_given_for() -> None:
    """Each part carries who, licence and date; the one that was read stays as it was."""
    for made in (
        signed(RULE, by(RULE)),
        signed(CARD, by(CARD)),
        signed(PHASES, by(PHASES)),
        signed(TABLE, by(TABLE)),
    ):
        assert made.reviewed is not None
        assert made.reviewed.model_dump() == WHO
    assert RULE.reviewed is None


def test_a_signature_is_void_where_the_content_has_changed() -> None:
    """Another word in the rule, another end of a phase, another bound of a table: nothing is signed."""
    changed = RULE.model_copy(update={"why": "Another reason."})
    assert signed(changed, by(RULE)) is changed
    clock = PHASES.clocks[0].model_copy(update={"acute_until": PHASES.clocks[0].acute_until + 1})
    later = PHASES.model_copy(update={"clocks": (clock, *PHASES.clocks[1:])})
    assert signed(later, by(PHASES)) is later
    wider = TABLE.model_copy(update={"not_after": TABLE.not_after + 1})
    assert signed(wider, by(TABLE)) is wider
    assert signed(CARD, None) is CARD


@EACH
def test_a_signature_changes_no_fingerprint(noun: Reviewable) -> None:
    """What is signed stays what it is when it carries the signature."""
    carrying = noun.model_copy(update={"reviewed": by(noun).reviewed()})
    assert fingerprint(carrying) == fingerprint(noun)


def test_a_date_is_a_date() -> None:
    """Nothing else is taken for one."""
    with pytest.raises(ValidationError):
        Signed.model_validate({**WHO, "date": "soon", "fingerprint": "a"})
