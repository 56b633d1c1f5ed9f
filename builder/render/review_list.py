"""The list a clinician goes through: each part of the content in words, under its fingerprint."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from builder.model.review import fingerprint
from builder.model.reviewable import WHOLE
from builder.model.rule import URGENCIES
from builder.render.maker import Maker
from builder.render.review_card import said_of_card
from builder.render.review_entry import Listed, Told
from builder.render.review_rule import said_of_rule
from builder.render.review_tables import said_of_background, said_of_phases, said_of_table


def listed(made: Maker) -> list[Listed]:
    """Rules that stop a session by urgency, rules about options, cards, then phases and tables."""
    content, say = made.course.content, made.say
    severity, phases = content.severity, content.phases
    return [
        *_rules(made),
        *_cards(made),
        Listed(
            "phases", WHOLE, say("review_phases"), fingerprint(phases), phases.reviewed, said_of_phases(made)
        ),
        *(
            Listed("severity", name, _plain(name), fingerprint(one), one.reviewed, said_of_table(made, one))
            for name, one in severity.tables.items()
        ),
        *(
            Listed(
                "background", name, one.title, fingerprint(one), one.reviewed, said_of_background(made, one)
            )
            for name, one in severity.background.items()
        ),
    ]


def remaining(entries: Iterable[Listed]) -> int:
    """How many have no signature that holds."""
    return sum(one.reviewed is None for one in entries)


def standing(made: Maker, one: Listed) -> str:
    """By whom it is reviewed, or that it is not."""
    signed = one.reviewed
    if signed is None:
        return made.say("i_not_reviewed")
    return made.say("i_reviewed", who=signed.who, licence=signed.licence, date=signed.date)


def in_text(made: Maker, entries: list[Listed]) -> Iterator[str]:
    """The list, line by line, for a terminal."""
    yield made.say("review_left", n=remaining(entries), all=len(entries))
    for one in entries:
        yield ""
        yield f"{one.part}/{one.id}  {one.title}  [{one.fingerprint}]"
        yield from _told_lines(one.told)
        yield f"  {standing(made, one)}"


def _told_lines(told: Told) -> Iterator[str]:
    for said in told.said:
        yield f"  {said.label}: {said.line}"
    for grid in told.grids:
        for first, *cells in grid.rows:
            yield f"  {grid.heads[0]}: {first}"
            yield from (
                f"    {head}: {cell}" for head, cell in zip(grid.heads[1:], cells, strict=True) if cell
            )


def _rules(made: Maker) -> Iterator[Listed]:
    rules = sorted(made.course.content.rules.values(), key=lambda one: one.title)
    order = [*reversed(URGENCIES), None]
    for urgency in order:
        for rule in rules:
            if (rule.session.urgency if rule.session else None) == urgency:
                told = said_of_rule(made, rule)
                yield Listed("rules", rule.id, rule.title, fingerprint(rule), rule.reviewed, told)


def _cards(made: Maker) -> Iterator[Listed]:
    cards = made.course.content.cards.values()
    for card in sorted(cards, key=lambda one: (one.kind != "technique", one.name)):
        yield Listed("cards", card.id, card.name, fingerprint(card), card.reviewed, said_of_card(made, card))


def _plain(name: str) -> str:
    return name.replace("_", " ").capitalize()
