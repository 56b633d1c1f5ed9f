"""The figure of a card, whichever it has."""

from decimal import Decimal

from builder.render.draw.stroke import stroke
from builder.render.draw.technique import beneath, technique
from builder.render.wording import speaker
from tests.judge.laws import shipped_world
from tests.render.samples import words

SAY = speaker(words())
CONTENT = shipped_world().content
FACTS = CONTENT.facts.written


def test_a_stroke_is_drawn_as_a_stroke() -> None:
    """What the hands do is one figure, and who moves stands under it."""
    friction = CONTENT.cards["friction"]
    assert technique(friction, FACTS, SAY) == stroke(friction, SAY)
    assert beneath(friction, FACTS, SAY) == [SAY("muscle_slack"), SAY("moves_therapist")]


def test_a_wrap_is_drawn_as_it_is_written() -> None:
    """At its usual dose, and where an option writes another, as that."""
    card = CONTENT.cards["wrap_pad"]
    usual, small = technique(card, FACTS, SAY), technique(card, FACTS, SAY, {"pad_ratio": Decimal(1)})
    assert usual
    assert small
    assert usual != small
    assert "1 times" in beneath(card, FACTS, SAY, {"pad_ratio": Decimal(1)})[0]


def test_every_hands_on_card_has_a_figure() -> None:
    """No technique of the hands is left without its drawing."""
    bare = [
        card.id
        for card in CONTENT.cards.values()
        if card.hands_on and card.kind == "technique" and not technique(card, FACTS, SAY)
    ]
    assert bare == []


def test_an_action_has_none() -> None:
    """What is not done to tissue is not drawn."""
    assert technique(CONTENT.cards["refer"], FACTS, SAY) == ""
