"""Every card with each answer of its baseline, on what it rests, and whether a clinician has looked at it."""

from __future__ import annotations

from builder.model.card import Card, CellRow
from builder.model.site import SitePage
from builder.render.instructor_address import CARDS
from builder.render.instructor_said import cited
from builder.render.limit import limit_text
from builder.render.maker import Maker
from builder.render.source import contested_text
from builder.render.student_card import where


def cards_page(made: Maker) -> SitePage:
    """Techniques, then actions, each by name."""
    cards = sorted(made.course.content.cards.values(), key=lambda card: card.name)
    groups = [
        (made.say(f"kinds_{kind}"), [card for card in cards if card.kind == kind])
        for kind in ("technique", "action")
    ]
    return made.page(
        CARDS,
        made.say("cards"),
        "instructor_cards",
        kind="cards",
        reviewed=all(card.reviewed for card in cards),
        groups=[(title, [_card(made, card) for card in some]) for title, some in groups if some],
        count=len(cards),
        unreviewed=sum(card.reviewed is None for card in cards),
    )


def _card(made: Maker, card: Card) -> dict[str, object]:
    aims = made.course.content.phases.aim_words
    return {
        "card": card,
        "serves": [aims.get(one, one) for one in card.serves],
        "groups": [one.replace("_", " ") for one in card.groups],
        "rows": [_row(made, row) for row in card.baseline],
    }


def _row(made: Maker, row: CellRow) -> dict[str, object]:
    facts = made.course.content.facts.written
    return {
        "mark": row.answer,
        "word": made.say(f"answer_{row.answer}"),
        "where": where(made, row),
        "limits": "; ".join(limit_text(node, facts, made.say) for node in row.limits.values()),
        "why": row.why,
        "strength": made.say(f"strength_{row.strength}"),
        "sources": cited(made, CARDS, row.source),
        "contested": contested_text(made, row.contested),
    }
