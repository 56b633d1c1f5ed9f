"""What the cards and rules say of one option as written: as it surely is, and at worst."""

from __future__ import annotations

from collections.abc import Mapping
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

    def __init__(self, cards: Mapping[str, Card], rules: list[Rule], space: Space) -> None:
        """Compile every effect once, and find the cards each bears on."""
        self.cards, self.space = cards, space
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

    def judge(self, frame: Frame, card: Card, site: Site, written: Mapping[str, Value]) -> OptionJudgement:
        """The answers for one option in a visit, with everything that bears on them."""
        state = self._with_written(frame, site, written)
        tally = Tally()
        self._baseline(tally, frame.phase.possible, card, site, state)
        for one in self.bearing[card.id]:
            if not one.effect.sites or site in one.effect.sites:
                self._rule(tally, one, state)
        return self._judgement(tally, frame, card, site, dict(written))

    def answers(
        self, frame: Frame, card: Card, site: Site, written: Mapping[str, Value]
    ) -> tuple[Answer, Answer]:
        """Only the two answers: as it surely is, and at worst."""
        judged = self.judge(frame, card, site, written)
        return judged.answer, judged.at_worst

    def _with_written(self, frame: Frame, site: Site, written: Mapping[str, Value]) -> list[int]:
        state = list(frame.state)
        self.space.record(state, "written.site", site)
        for name, value in written.items():
            self.space.record(state, f"written.{name}", value)
        return state

    def _baseline(
        self, tally: Tally, phases: tuple[Phase, ...], card: Card, site: Site, state: list[int]
    ) -> None:
        cells = [card.cell(phase, site) for phase in phases]
        rows = {id(row): row for row in cells}
        sure_ranks = []
        for row in rows.values():
            here = Tally()
            truth = Truth.TRUE if len(rows) == 1 else Truth.OPEN
            here.add(row.answer, Truth.TRUE)
            for node, test in self.limits[id(row)] if row.answer == "ok" else ():
                self._limit(here, node, test(state), Truth.TRUE)
            if here.worst or len(rows) == 1:
                tally.fired.append(
                    _fired_cell(card, row, truth, ANSWERS[here.worst], "; ".join(here.changes) or None)
                )
            tally.changes += here.changes
            tally.worst = max(tally.worst, here.worst)
            for name, ids in here.waiting.items():
                tally.waiting.setdefault(name, []).extend(ids)
            sure_ranks.append(here.sure)
        tally.sure = max(tally.sure, min(sure_ranks))

    def _limit(self, tally: Tally, node: Node, met: Truth, when: Truth) -> str | None:
        if met is Truth.TRUE:
            return None
        tally.add("change", Truth.TRUE if met is Truth.FALSE and when is Truth.TRUE else Truth.OPEN)
        words = limit_words(node, self.space)
        if words not in tally.changes:
            tally.changes.append(words)
        return words

    def _rule(self, tally: Tally, one: Bearing, state: list[int]) -> None:
        when = one.when(state)
        if when is Truth.FALSE:
            return
        if one.effect.answer is not None:
            tally.add(one.effect.answer, when)
            tally.fired.append(fired_rule(one.rule, when, one.effect.answer))
            self._wait(tally, one, when, state)
            return
        asked_for = [self._limit(tally, node, test(state), when) for node, test in one.needs]
        if changes := [words for words in asked_for if words]:
            tally.fired.append(fired_rule(one.rule, when, "change", "; ".join(changes)))
            self._wait(tally, one, when, state)

    def _wait(self, tally: Tally, one: Bearing, when: Truth, state: list[int]) -> None:
        for name in open_facts(one.rule.when, self.space, state) if when is Truth.OPEN else ():
            if not name.startswith("written."):
                tally.waiting.setdefault(name, []).append(one.rule.id)

    def _judgement(
        self, tally: Tally, frame: Frame, card: Card, site: Site, written: dict[str, Value]
    ) -> OptionJudgement:
        serves = all(aim in card.serves for aim in frame.aims)
        return OptionJudgement(
            card=card.id,
            site=site,
            written=written,
            answer=ANSWERS[tally.sure],
            at_worst=ANSWERS[tally.worst],
            serves_aim=serves,
            right=tally.worst == 0 and serves,
            ask=self._asked(tally.waiting),
            rules=tuple(sorted(tally.fired, key=lambda one: (one.truth != "fires", -_rank(one.effect)))),
            change="; ".join(tally.changes) or None,
        )

    def _asked(self, waiting: dict[str, list[str]]) -> tuple[Asked, ...]:
        derived = ("phase", "severity", "signs_behind", "session_urgency")
        return tuple(asked(self.space, name, ids) for name, ids in waiting.items() if name not in derived)


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


def _fired_cell(card: Card, row: CellRow, truth: Truth, effect: Answer, change: str | None) -> Fired:
    return Fired(
        id=f"baseline.{card.id}",
        title=card.name,
        truth="fires" if truth is Truth.TRUE else "open",
        effect=effect,
        why=row.why,
        strength=row.strength,
        source=row.source,
        contested=row.contested,
        reviewed=card.reviewed is not None,
        change=change,
    )
