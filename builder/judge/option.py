"""What the cards and rules say of one option as written: as it surely is, and at worst."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from copy import copy
from dataclasses import dataclass, field

from builder.judge.frame import Frame
from builder.judge.session import asked, fired_rule
from builder.judge.space import Space, Value
from builder.judge.truth import Test, Truth, compiled, open_facts
from builder.judge.words import limit_words
from builder.model.card import ANSWERS, Answer, Card, CellRow, Phase, Site
from builder.model.condition import Node, atoms
from builder.model.judgement import Asked, Fired, OptionJudgement
from builder.model.rule import OptionEffect, Rule

Waits = Callable[[list[int]], list[str]]


@dataclass(frozen=True)
class Bearing:
    """One effect of one rule on one card, compiled."""

    rule: Rule
    effect: OptionEffect
    when: Test
    needs: tuple[tuple[Node, Test], ...]


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


def groups_of(card: Card) -> set[str]:
    """Every group by which rules may address a card."""
    given = set(card.groups)
    if card.hands_on:
        given.add("hands_on")
    if card.kind == "technique":
        given.add("techniques")
    if not set(card.serves) <= {"ask", "refer"}:
        given.add("all")
    return given


class OptionJudge:
    """All cards with the effects that bear on each, ready to judge."""

    def __init__(
        self, cards: Mapping[str, Card], rules: list[Rule], space: Space, derived: Mapping[str, Waits]
    ) -> None:
        """Compile every effect once, and find the cards each bears on.

        `derived` names what is worked out, each with what it waits for where it is not sure.
        """
        self.cards, self.space, self.derived = cards, space, derived
        self.limits = {
            id(row): _compiled_limits(row.limits, space) for one in cards.values() for row in one.baseline
        }
        effects = [
            Bearing(rule, effect, compiled(rule.when, space), _compiled_limits(effect.needs, space))
            for rule in rules
            for effect in rule.options
        ]
        self.names = {card.id: _names(card, effects) for card in cards.values()}
        self.bearing = {
            card.id: [one for one in effects if _addresses(one.effect, card)] for card in cards.values()
        }

    def without(self, rule: str) -> OptionJudge:
        """The same without one rule."""
        other = copy(self)
        other.bearing = {
            card: [one for one in effects if one.rule.id != rule] for card, effects in self.bearing.items()
        }
        return other

    def judge(self, frame: Frame, card: Card, site: Site, written: Mapping[str, Value]) -> OptionJudgement:
        """The answers for one option in a visit, with everything that bears on them."""
        tally = self._tally(frame, card, site, written)
        serves = all(aim in card.serves for aim in frame.aims)
        return OptionJudgement(
            card=card.id,
            site=site,
            written=dict(written),
            answer=ANSWERS[tally.sure],
            at_worst=ANSWERS[tally.worst],
            serves_aim=serves,
            right=tally.worst == 0 and serves,
            ask=self._asked(tally.waiting, list(frame.state)),
            rules=tuple(sorted(tally.fired, key=lambda one: (one.truth != "fires", -_rank(one.effect)))),
            change="; ".join(tally.changes) or None,
        )

    def answers(
        self, frame: Frame, card: Card, site: Site, written: Mapping[str, Value]
    ) -> tuple[Answer, Answer]:
        """Only the two answers: as it surely is, and at worst."""
        tally = self._tally(frame, card, site, written)
        return ANSWERS[tally.sure], ANSWERS[tally.worst]

    def is_barred_by(self, state: list[int], card: str, moving: frozenset[str] | set[str]) -> bool:
        """Whether a rule that names nothing of what moves bars a card everywhere, surely or at worst."""
        return any(
            one.effect.answer == "barred"
            and not one.effect.sites
            and one.when(state) is not Truth.FALSE
            and not any(atom.name in moving for atom in atoms(one.rule.when))
            for one in self.bearing[card]
        )

    def _tally(self, frame: Frame, card: Card, site: Site, written: Mapping[str, Value]) -> Tally:
        state = self._with_written(frame, site, written)
        tally = Tally()
        self._baseline(tally, frame.phase.possible, card, site, state)
        for one in self.bearing[card.id]:
            if not one.effect.sites or site in one.effect.sites:
                self._rule(tally, one, state)
        return tally

    def _with_written(self, frame: Frame, site: Site, written: Mapping[str, Value]) -> list[int]:
        state = list(frame.state)
        self.space.record(state, "written.site", site)
        for name, value in written.items():
            self.space.record(state, f"written.{name}", value)
        return state

    def _baseline(
        self, tally: Tally, phases: tuple[Phase, ...], card: Card, site: Site, state: list[int]
    ) -> None:
        rows = {id(row): row for row in (card.cell(phase, site) for phase in phases)}
        found = [(row, self._row(row, state)) for row in rows.values()]
        sure = min(here.sure for _, here in found)
        for row, here in found:
            if here.worst or len(rows) == 1:
                fires = len(rows) == 1 and here.sure == here.worst
                tally.fired.append(_fired_cell(card, row, here, fires=fires))
            tally.take(here, sure)
        if sure < tally.worst and len(rows) > 1:
            tally.waiting.setdefault("phase", []).append(f"baseline.{card.id}")

    def _row(self, row: CellRow, state: list[int]) -> Tally:
        here = Tally()
        here.add(row.answer, Truth.TRUE)
        for node, test in self.limits[id(row)] if row.answer == "ok" else ():
            self._limit(here, node, test(state), Truth.TRUE)
        return here

    def _limit(self, tally: Tally, node: Node, met: Truth, when: Truth) -> None:
        if met is Truth.TRUE:
            return
        tally.add("change", Truth.TRUE if met is Truth.FALSE and when is Truth.TRUE else Truth.OPEN)
        tally.changes.append(limit_words(node, self.space))

    def _rule(self, tally: Tally, one: Bearing, state: list[int]) -> None:
        when = one.when(state)
        if when is Truth.FALSE:
            return
        here = Tally()
        if one.effect.answer is not None:
            here.add(one.effect.answer, when)
        for node, test in one.needs:
            self._limit(here, node, test(state), when)
        if not here.worst:
            return
        truth = Truth.TRUE if here.sure == here.worst else Truth.OPEN
        tally.fired.append(fired_rule(one.rule, truth, ANSWERS[here.worst], "; ".join(here.changes) or None))
        tally.take(here, here.sure)
        for name in open_facts(one.rule.when, self.space, state) if when is Truth.OPEN else ():
            tally.waiting.setdefault(name, []).append(one.rule.id)

    def _asked(self, waiting: dict[str, list[str]], state: list[int]) -> tuple[Asked, ...]:
        found: dict[str, list[str]] = {}
        for name, rules in waiting.items():
            for fact in self._to_ask(name, state):
                found.setdefault(fact, []).extend(rules)
        return tuple(asked(self.space, fact, rules) for fact, rules in found.items())

    def _to_ask(self, name: str, state: list[int]) -> Iterator[str]:
        """The facts a client can be asked for: what is derived waits for others, what is written for none."""
        if name in self.derived:
            for other in self.derived[name](state):
                yield from self._to_ask(other, state)
        elif not name.startswith("written."):
            yield name


def _names(card: Card, effects: list[Bearing]) -> frozenset[str]:
    """Every variable that a limit of the card or a rule about it names."""
    nodes = [node for row in card.baseline for node in row.limits.values()]
    for one in effects:
        if _addresses(one.effect, card):
            nodes += [one.rule.when, *one.effect.needs.values()]
    return frozenset(atom.name for node in nodes for atom in atoms(node))


def _rank(effect: str) -> int:
    return ANSWERS.index(effect) if effect in ANSWERS else 0


def _addresses(effect: OptionEffect, card: Card) -> bool:
    return card.id in effect.cards or bool(groups_of(card) & set(effect.groups))


def _compiled_limits(limits: dict[str, Node], space: Space) -> tuple[tuple[Node, Test], ...]:
    return tuple((node, compiled(node, space)) for node in limits.values())


def _fired_cell(card: Card, row: CellRow, here: Tally, *, fires: bool) -> Fired:
    return Fired(
        id=f"baseline.{card.id}",
        title=card.name,
        truth="fires" if fires else "open",
        effect=ANSWERS[here.worst],
        why=row.why,
        strength=row.strength,
        source=row.source,
        contested=row.contested,
        reviewed=card.reviewed is not None,
        change="; ".join(here.changes) or None,
    )
