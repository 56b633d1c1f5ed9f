"""Cards as pages: an index, and one calm page for each technique or action."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby

from builder.doors.page import markup
from builder.model.card import PHASES, SITES, Card, CellRow, Phase
from builder.model.site import SitePage
from builder.render import address
from builder.render.draw.technique import beneath, technique
from builder.render.limit import limit_text
from builder.render.maker import Maker, all_reviewed
from builder.render.source import contested_text, rests_on
from builder.render.wording import chip


@dataclass(frozen=True)
class Cell:
    """One answer of the grid, over `span` sites beside each other."""

    answer: str
    limited: bool
    span: int


def card_pages(made: Maker) -> list[SitePage]:
    """The index of cards, then every card: techniques before actions, each by name."""
    cards = sorted(made.course.content.cards.values(), key=lambda card: (card.kind != "technique", card.name))
    return [_index(made, cards), *(_page(made, card) for card in cards)] if cards else []


def _index(made: Maker, cards: list[Card]) -> SitePage:
    groups = [
        {"title": made.say(f"kinds_{kind}"), "cards": [_entry(made, card) for card in some]}
        for kind, some in groupby(cards, key=lambda card: card.kind)
    ]
    title = made.say("cards")
    return made.page(
        address.CARDS, title, "cards", kind="cards", reviewed=all_reviewed(made.course), groups=groups
    )


def _entry(made: Maker, card: Card) -> dict[str, str]:
    return {"address": address.of_card(card.id), "name": card.name, "serves": ", ".join(_serves(made, card))}


def _page(made: Maker, card: Card) -> SitePage:
    words = made.course.content.phases.phase_words
    facts = made.course.content.facts.written
    return made.page(
        address.of_card(card.id),
        card.name,
        "card",
        kind="card",
        reviewed=card.reviewed is not None,
        card=card,
        figure=markup(technique(card, facts, made.say)),
        beneath=beneath(card, facts, made.say),
        serves=_serves(made, card),
        usual=[chip(name, facts.get(name), value) for name, value in card.usual.items()],
        sites=SITES,
        grid=[(words[phase], _cells(card, phase)) for phase in PHASES],
        limits=[
            {"where": where(made, row), "text": _limits(made, row)} for row in card.baseline if row.limits
        ],
        reasons=[_reason(made, row) for row in card.baseline],
    )


def _serves(made: Maker, card: Card) -> list[str]:
    words = made.course.content.phases.aim_words
    return [words.get(aim, aim) for aim in card.serves]


def _cells(card: Card, phase: Phase) -> list[Cell]:
    rows = [card.cell(phase, site) for site in SITES]
    runs = groupby(rows, key=lambda row: (row.answer, bool(row.limits)))
    return [Cell(answer, limited, len(list(some))) for (answer, limited), some in runs]


def where(made: Maker, row: CellRow) -> str:
    """The phases and sites of a row of the baseline, in words."""
    words = made.course.content.phases.phase_words
    phases = (
        made.say("any_phase") if len(row.phase) == len(PHASES) else ", ".join(words[one] for one in row.phase)
    )
    sites = (
        made.say("any_site")
        if len(row.site) == len(SITES)
        else ", ".join(made.say(f"site_{one}") for one in row.site)
    )
    return f"{phases} · {sites}"


def _limits(made: Maker, row: CellRow) -> str:
    facts = made.course.content.facts.written
    return "; ".join(limit_text(node, facts, made.say) for node in row.limits.values())


def _reason(made: Maker, row: CellRow) -> dict[str, str]:
    return {
        "answer": row.answer,
        "where": where(made, row),
        "why": row.why,
        "rests_on": rests_on(made, row.source, row.strength),
        "contested": contested_text(made, row.contested),
    }
