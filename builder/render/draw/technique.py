"""The figure of a card: the stroke of a hand, or a wrap with its pad."""

from __future__ import annotations

from collections.abc import Mapping

from builder.model.card import Card
from builder.model.fact import Fact
from builder.render.draw.stroke import stroke
from builder.render.draw.wrap import Written, wrap, wrap_words
from builder.render.wording import Say


def technique(card: Card, facts: Mapping[str, Fact], say: Say, written: Written | None = None) -> str:
    """The figure of a card as written, else at its usual dose; nothing where there is none."""
    return stroke(card, say) or wrap(card.name, _as_done(card, written), facts, say)


def beneath(card: Card, facts: Mapping[str, Fact], say: Say, written: Written | None = None) -> list[str]:
    """What stands under the figure: how the wrap goes, or who moves and how the muscle is."""
    if card.stroke == "none":
        return wrap_words(_as_done(card, written), facts, say)
    parts = [f"muscle_{card.muscle}"] if card.muscle != "any" else []
    return [
        say(part) for part in (*parts, *([f"moves_{card.who_moves}"] if card.who_moves != "nobody" else []))
    ]


def _as_done(card: Card, written: Written | None) -> Written:
    return {**card.usual, **(written or {})}
