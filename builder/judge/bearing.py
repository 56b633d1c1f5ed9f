"""The cells and effects that bear on cards, compiled."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import product

from builder.judge.said import Said
from builder.judge.space import Space
from builder.judge.truth import FALSE, TRUE, Test, compiled
from builder.judge.words import limit_words
from builder.model.card import ANSWERS, HOLE, SITES, Card, CellRow, Phase, Site
from builder.model.condition import Node, atoms
from builder.model.rule import OptionEffect, Rule

Limits = tuple[tuple[Node, Test], ...]
Ranks = tuple[int, int]


@dataclass(frozen=True, eq=False)
class Bearing:
    """One effect of one rule on some cards, compiled.

    `by_option`: its condition names how an option is written. `said`: what it says of an option, by the truth
    of its condition and of its needs.
    """

    rule: Rule
    effect: OptionEffect
    cards: frozenset[str]
    when: Test
    needs: Limits
    sites: frozenset[Site]
    rank: int
    names: frozenset[str]
    by_option: bool
    said: dict[int, Said] = field(default_factory=dict, repr=False)


@dataclass(frozen=True, eq=False)
class Cell:
    """One cell of a card's grid, compiled; only an OK cell has limits.

    `said`: what it says of an option, by whether it surely holds and the truth of its limits.
    """

    row: CellRow
    rank: int
    limits: Limits
    said: dict[int, Said] = field(default_factory=dict, repr=False)


def bearings(rules: Sequence[Rule], cards: Mapping[str, Card], space: Space) -> dict[str, list[Bearing]]:
    """For each rule that is about options, its effects, compiled once."""
    return {rule.id: list(_bearings(rule, cards, space)) for rule in rules if rule.options}


def _bearings(rule: Rule, cards: Mapping[str, Card], space: Space) -> Iterator[Bearing]:
    names = frozenset(atom.name for atom in atoms(rule.when))
    when = compiled(rule.when, space)
    by_option = any(name.startswith("written.") for name in names)
    for effect in rule.options:
        yield Bearing(
            rule,
            effect,
            frozenset(name for name, card in cards.items() if effect.addresses(card)),
            when,
            _compiled_limits(effect.needs, space),
            frozenset(effect.sites or SITES),
            ANSWERS.index(effect.answer or "ok"),
            names,
            by_option,
        )


def grid(card: Card, space: Space) -> dict[tuple[Phase, Site], Cell]:
    """The card's cell for each phase and site, compiled; where no row names them, one that bars."""
    found: dict[tuple[Phase, Site], Cell] = {}
    for row in (*card.baseline, HOLE):
        cell = cell_of(row, space)
        for key in product(row.phase, row.site):
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
        if (met := test(state)) is not TRUE:
            worst = 1
            if certain and (met is FALSE or _stays(node, moving)):
                sure = 1
    return sure, worst


def met(limits: Limits, state: list[int], start: int) -> int:
    """One number for `start` and how far each limit is met; where all are, all its later digits are 2."""
    code = int(start)
    for _, test in limits:
        code = 3 * code + test(state)
    return code


def by_limits(
    limits: Limits, state: list[int], rank: int, space: Space, *, certain: bool
) -> tuple[int, int, tuple[str, ...]]:
    """How bad an answer of this rank with these limits surely is and at worst, and what must be written."""
    lacking = [(node, truth) for node, test in limits if (truth := test(state)) is not TRUE]
    missed = any(truth is FALSE for _, truth in lacking)
    sure = max(rank, int(missed)) if certain else 0
    return sure, max(rank, int(bool(lacking))), tuple(limit_words(node, space) for node, _ in lacking)


def _stays(node: Node, moving: frozenset[str] | None) -> bool:
    return moving is not None and all(atom.name not in moving for atom in atoms(node))


def _compiled_limits(limits: Mapping[str, Node], space: Space) -> Limits:
    return tuple((node, compiled(node, space)) for node in limits.values())
