"""The list for review: rules and cards in words, signed or not."""

from builder.model.card import Reviewed
from builder.render.maker import Maker, maker
from builder.render.review_list import as_sheet, in_text, listed, remaining
from tests.demo.built import opened


def demonstration() -> Maker:
    """The maker of the demonstration's pages."""
    course = opened().course
    assert course is not None
    return maker(course)


def test_a_card_says_every_cell_and_a_rule_when_it_fires() -> None:
    """In words, each with what it rests on."""
    made = demonstration()
    entries = {(one.part, one.id): one for one in listed(made)}
    content = made.course.content
    knead = entries["cards", "knead"].said
    assert sum(label == made.say("reasons") for label, _ in knead) == len(content.cards["knead"].baseline)
    labels = [label for label, _ in entries["rules", "no_consent"].said]
    assert labels[0] == made.say("i_when")
    assert {made.say("review_fires_yes"), made.say("review_fires_no")} <= set(labels)


def test_what_is_signed_shows_by_whom() -> None:
    """Name, licence and date, in the text and on the sheet; it is no longer counted."""
    made = demonstration()
    first, *rest = listed(made)
    by = Reviewed(who="Some Clinician", licence="L-1", date="2026-11-01")
    signed = [type(first)(first.part, first.id, first.title, first.fingerprint, by, first.said), *rest]
    assert remaining(signed) == len(rest)
    assert "Some Clinician" in "\n".join(in_text(made, signed))
    assert "Some Clinician" in as_sheet(made, signed)
