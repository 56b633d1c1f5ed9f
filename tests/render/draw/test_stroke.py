"""The stroke figure of a technique."""

from typing import get_args

from builder.model.card import Card
from builder.render.draw.stroke import HANDS, stroke
from builder.render.wording import speaker
from tests.render.samples import cards, words

SAY = speaker(words())


def test_every_stroke_has_its_figure() -> None:
    """Each way a hand can move is drawn and said, and none looks like another."""
    kinds = set(get_args(Card.model_fields["stroke"].annotation)) - {"none"}
    friction = cards()["friction"]
    drawn = {kind: stroke(friction.model_copy(update={"stroke": kind}), SAY) for kind in kinds}
    assert kinds == HANDS.keys()
    assert len(set(drawn.values())) == len(kinds)
    assert all(f"Cross-fibre friction: {SAY(f'stroke_{kind}')}" in figure for kind, figure in drawn.items())


def test_no_stroke_no_figure() -> None:
    """An action is not drawn as a hand."""
    assert stroke(cards()["refer"], SAY) == ""
