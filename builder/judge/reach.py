"""How far each card's answer reaches, as clauses: everything that pushes it, and to which answer.

Here what is written is part of the client's visit, so that limits and needs count as they do in the judge.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from builder.judge.encode import Encoding, sites_of
from builder.model.card import ANSWERS, PHASES, Card, CellRow
from builder.model.condition import Node
from builder.model.rule import OptionEffect, Rule

CHANGE = ANSWERS.index("change")
WRITTEN_SITE = "written.site"


@dataclass(frozen=True)
class Push:
    """One thing that pushes an answer: to which rank, where it is true, and the rule it comes from.

    `demand` is what must be written, where that is what it is about, and `bears` where it is asked for.
    """

    rank: int
    literal: int
    rule: str | None
    bears: int
    demand: Node | None = None


class Reach:
    """Every push on every card and site of one encoding."""

    def __init__(self, proof: Encoding) -> None:
        """Lay out what the cells, the limits and the rules do to each card at each site."""
        self.proof = proof
        self.pushes = {
            (card.id, site): [*self._cells(card, site), *self._rules(card, site)]
            for card in proof.content.cards.values()
            for site in sites_of(card)
        }

    def at_least(self, card: str, site: str, rank: int) -> int:
        """True where the answer is at least as strict as this rank."""
        return self.proof.any_of([one.literal for one in self.pushes[card, site] if one.rank >= rank])

    def here(self, site: str) -> list[int]:
        """What is assumed when a card is written for a site."""
        return [self.proof.word(WRITTEN_SITE, site)] if WRITTEN_SITE in self.proof.cells else []

    def _cells(self, card: Card, site: str) -> Iterator[Push]:
        rows: dict[int, tuple[CellRow, list[int]]] = {}
        for phase in PHASES:
            row = card.cell(phase, site)  # type: ignore[arg-type]
            rows.setdefault(id(row), (row, []))[1].append(self.proof.word("phase", phase))
        for row, words in rows.values():
            bears = self.proof.any_of(words)
            if row.answer != "ok":
                yield Push(ANSWERS.index(row.answer), bears, None, bears)
            else:
                yield from (self._demand(one, bears, None) for one in row.limits.values())

    def _rules(self, card: Card, site: str) -> Iterator[Push]:
        for rule, effect in self.proof.about(card, site):
            yield from self._effect(rule, effect)

    def _effect(self, rule: Rule, effect: OptionEffect) -> Iterator[Push]:
        fires = self.proof.fires[rule.id]
        if effect.answer is not None:
            yield Push(ANSWERS.index(effect.answer), fires, rule.id, fires)
        yield from (self._demand(one, fires, rule.id) for one in effect.needs.values())

    def _demand(self, node: Node, bears: int, rule: str | None) -> Push:
        unmet = -self.proof.any_of([-bears, self.proof.literal(node)])
        return Push(CHANGE, unmet, rule, bears, node)
