"""The cells and effects that bear on cards, compiled, and the answer that grows from them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from builder.judge.space import Space
from builder.judge.truth import Test, Truth, compiled
from builder.model.card import ANSWERS, SITES, Answer, Card, CellRow, Phase, Site
from builder.model.condition import Node, atoms
from builder.model.judgement import Fired
from builder.model.rule import OptionEffect, Rule

Limits = tuple[tuple[Node, Test], ...]
Ranks = tuple[int, int]


@dataclass(frozen=True)
class Bearing:
    """One effect of one rule, compiled; `by_option`: its condition names how an option is written."""

    rule: Rule
    effect: OptionEffect
    when: Test
    needs: Limits
    sites: frozenset[Site]
    rank: int
    names: frozenset[str]
    by_option: bool


@dataclass(frozen=True)
class Cell:
    """One cell of a card's grid, compiled; only an OK cell has limits."""

    row: CellRow
    rank: int
    limits: Limits


@dataclass
class Tally:
    """The answer as it grows: worst wins, apart for what is sure and what may be."""

    sure: int = 0
    worst: int = 0
    fired: list[Fired] = field(default_factory=list)
    changes: list[str] = field(default_factory=list)
    waiting: dict[str, list[str]] = field(default_factory=dict)

    def add(self, answer: Answer, truth: Truth) -> None:
        """Count one effect."""
        rank = ANSWERS.index(answer)
        self.worst = max(self.worst, rank)
        if truth is Truth.TRUE:
            self.sure = max(self.sure, rank)

    def take(self, other: Tally, sure: int) -> None:
        """Count all of another tally, of which `sure` is as bad as it surely is here."""
        self.sure, self.worst = max(self.sure, sure), max(self.worst, other.worst)
        self.changes += [words for words in other.changes if words not in self.changes]


def bearings(rules: Sequence[Rule], space: Space) -> list[Bearing]:
    """Every effect of every rule on options, compiled once."""
    return [_bearing(rule, effect, space) for rule in rules for effect in rule.options]


def _bearing(rule: Rule, effect: OptionEffect, space: Space) -> Bearing:
    names = frozenset(atom.name for atom in atoms(rule.when))
    return Bearing(
        rule,
        effect,
        compiled(rule.when, space),
        _compiled_limits(effect.needs, space),
        frozenset(effect.sites or SITES),
        ANSWERS.index(effect.answer or "ok"),
        names,
        any(name.startswith("written.") for name in names),
    )


def grid(card: Card, space: Space) -> dict[tuple[Phase, Site], Cell]:
    """The card's cell for each phase and site that its rows name, compiled."""
    found: dict[tuple[Phase, Site], Cell] = {}
    for row in card.baseline:
        cell = cell_of(row, space)
        for key in ((phase, site) for phase in row.phase for site in row.site):
            found.setdefault(key, cell)
    return found


def cell_of(row: CellRow, space: Space) -> Cell:
    """One row compiled."""
    limits = _compiled_limits(row.limits, space) if row.answer == "ok" else ()
    return Cell(row, ANSWERS.index(row.answer), limits)


def ranks_of(limits: Limits, state: list[int], moving: frozenset[str] | None, *, certain: bool) -> Ranks:
    """How bad limits are, certainly and at worst; one that is open is certain where it stays so.

    `certain`: whether what sets them is; `moving`: as for the ranks of an option.
    """
    sure = worst = 0
    for node, test in limits:
        if (met := test(state)) is not Truth.TRUE:
            worst = 1
            if certain and (met is Truth.FALSE or _stays(node, moving)):
                sure = 1
    return sure, worst


def _stays(node: Node, moving: frozenset[str] | None) -> bool:
    return moving is not None and all(atom.name not in moving for atom in atoms(node))


def _compiled_limits(limits: Mapping[str, Node], space: Space) -> Limits:
    return tuple((node, compiled(node, space)) for node in limits.values())
