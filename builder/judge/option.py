"""What the cards and rules say of one option as written: as it surely is, and at worst."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from copy import copy

from builder.judge.bearing import Bearing, Cell, Ranks, Tally, bearings, cell_of, grid, ranks_of
from builder.judge.frame import Frame
from builder.judge.session import asked, fired_rule
from builder.judge.space import Space, Value
from builder.judge.truth import Truth, open_facts
from builder.judge.words import limit_words
from builder.model.card import ANSWERS, HOLE, Answer, Card, CellRow, Phase, Site
from builder.model.condition import Node, atoms
from builder.model.judgement import Asked, Fired, OptionJudgement
from builder.model.rule import OptionEffect, Rule

Waits = Callable[[list[int]], list[str]]
Live = list[tuple[Bearing, Truth | None]]


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
        self.grids = {card.id: grid(card, space) for card in cards.values()}
        self.hole = cell_of(HOLE, space)
        self.spots: dict[tuple[str, Value], tuple[tuple[int, int], ...]] = {}
        effects = bearings(rules, space)
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
        tally = self._tally(frame, card, site, self.with_written(frame, site, written))
        serves = all(aim in card.serves for aim in frame.aims)
        return OptionJudgement(
            card=card.id,
            site=site,
            written=dict(written),
            answer=ANSWERS[tally.sure],
            at_worst=ANSWERS[tally.worst],
            serves_aim=serves,
            right=tally.worst == 0 and serves,
            ask=self._asked(tally.waiting, frame),
            rules=tuple(sorted(tally.fired, key=_first_told)),
            change="; ".join(tally.changes) or None,
        )

    def answers(
        self, frame: Frame, card: Card, site: Site, written: Mapping[str, Value]
    ) -> tuple[Answer, Answer]:
        """Only the two answers: as it surely is, and at worst."""
        sure, worst = self.ranks(frame, card, site, self.with_written(frame, site, written))
        return ANSWERS[sure], ANSWERS[worst]

    def ranks(
        self, frame: Frame, card: Card, site: Site, state: list[int], moving: frozenset[str] | None = None
    ) -> Ranks:
        """The two answers as ranks, for a state of the visit with what is written in it.

        Where `moving` is given, it is left open to be changed, and an effect that names nothing of it and is
        open stays so: the first rank is then the least that the answer at worst can be.
        """
        cells = [
            (cell.rank, cell.rank) if cell.rank else ranks_of(cell.limits, state, moving, certain=True)
            for cell in self._cells(frame.phase.possible, card, site)
        ]
        sure, worst = min(one[0] for one in cells), max(one[1] for one in cells)
        for one, known in self._live(frame, card):
            when = one.when(state) if known is None else known
            if when is Truth.FALSE or site not in one.sites:
                continue
            certain = when is Truth.TRUE or (moving is not None and self._stays(one, frame, state, moving))
            if one.needs:
                surely, maybe = ranks_of(one.needs, state, moving, certain=certain)
            else:
                surely, maybe = (one.rank if certain else 0), one.rank
            sure, worst = max(sure, surely), max(worst, maybe)
        return sure, worst

    def _stays(self, one: Bearing, frame: Frame, state: list[int], moving: frozenset[str]) -> bool:
        """Whether an effect that is open can not be ruled out, whatever becomes of `moving`."""
        if one.names.isdisjoint(moving):
            return True
        if not frame.urgent or "session_urgency" not in one.names:
            return False
        urgent = list(state)
        urgent[self.space.index["session_urgency"]] = frame.urgent
        return one.when(urgent) is Truth.TRUE

    def _tally(self, frame: Frame, card: Card, site: Site, state: list[int]) -> Tally:
        tally = Tally()
        self._baseline(tally, frame.phase.possible, card, site, state)
        for one, known in self._live(frame, card):
            when = one.when(state) if known is None else known
            if when is not Truth.FALSE and site in one.sites:
                self._rule(tally, frame, one, when, state)
        return tally

    def _cells(self, phases: tuple[Phase, ...], card: Card, site: Site) -> list[Cell]:
        """The different cells that may hold, in the order of the phases."""
        cells = self.grids[card.id]
        found = (cells.get((phase, site), self.hole) for phase in phases)
        return list({id(one): one for one in found}.values())

    def _live(self, frame: Frame, card: Card) -> Live:
        """The effects that may fire in a visit, each with its truth unless that is the option's to say."""
        effects, kept = self.bearing[card.id], frame.kept
        held = kept.live.get(card.id)
        if held is None or held[0] is not effects:
            state = list(frame.state)
            found: Live = []
            for one in effects:
                if one.by_option:
                    found.append((one, None))
                    continue
                if (truth := kept.truths.get(one.rule.id)) is None:
                    truth = kept.truths[one.rule.id] = one.when(state)
                if truth is not Truth.FALSE:
                    found.append((one, truth))
            held = kept.live[card.id] = (effects, found)
        return held[1]

    def with_written(self, frame: Frame, site: Site, written: Mapping[str, Value]) -> list[int]:
        """The visit's state with what an option has written."""
        state = list(frame.state)
        for key in (("site", site), *written.items()):
            spots = self.spots.get(key)
            if spots is None:
                spots = self.spots[key] = self.space.spots(f"written.{key[0]}", key[1])
            for index, mask in spots:
                state[index] = mask
        return state

    def _baseline(
        self, tally: Tally, phases: tuple[Phase, ...], card: Card, site: Site, state: list[int]
    ) -> None:
        found = [(cell.row, self._cell(cell, state)) for cell in self._cells(phases, card, site)]
        sure = min(here.sure for _, here in found)
        for row, here in found:
            if here.worst or len(found) == 1:
                fires = len(found) == 1 and here.sure == here.worst
                tally.fired.append(_fired_cell(card, row, here, fires=fires))
            tally.take(here, sure)
        if sure < tally.worst and len(found) > 1:
            tally.waiting.setdefault("phase", []).append(f"baseline.{card.id}")

    def _cell(self, cell: Cell, state: list[int]) -> Tally:
        here = Tally()
        here.add(cell.row.answer, Truth.TRUE)
        for node, test in cell.limits:
            self._limit(here, node, test(state), Truth.TRUE)
        return here

    def _limit(self, tally: Tally, node: Node, met: Truth, when: Truth) -> None:
        if met is Truth.TRUE:
            return
        tally.add("change", Truth.TRUE if met is Truth.FALSE and when is Truth.TRUE else Truth.OPEN)
        tally.changes.append(limit_words(node, self.space))

    def _rule(self, tally: Tally, frame: Frame, one: Bearing, when: Truth, state: list[int]) -> None:
        key = id(one), when
        said = frame.kept.said.get(key)
        if said is None:
            here = Tally()
            if one.effect.answer is not None:
                here.add(one.effect.answer, when)
            for node, test in one.needs:
                self._limit(here, node, test(state), when)
            truth = Truth.TRUE if here.sure == here.worst else Truth.OPEN
            fired = fired_rule(one.rule, truth, ANSWERS[here.worst], "; ".join(here.changes) or None)
            waiting = open_facts(one.rule.when, self.space, state) if when is Truth.OPEN else []
            said = here, fired, waiting
            if not (one.needs or one.by_option):
                frame.kept.said[key] = said
        here, fired, waiting = said
        if here.worst:
            tally.fired.append(fired)
            tally.take(here, here.sure)
            for name in waiting:
                tally.waiting.setdefault(name, []).append(one.rule.id)

    def _asked(self, waiting: dict[str, list[str]], frame: Frame) -> tuple[Asked, ...]:
        found: dict[str, list[str]] = {}
        waits = frame.kept.waits
        for name, rules in waiting.items():
            if name not in waits:
                waits[name] = tuple(self._to_ask(name, list(frame.state)))
            for fact in waits[name]:
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


def _first_told(one: Fired) -> tuple[bool, int]:
    return one.truth != "fires", -ANSWERS.index(one.effect) if one.effect in ANSWERS else 0


def _addresses(effect: OptionEffect, card: Card) -> bool:
    return card.id in effect.cards or bool(groups_of(card) & set(effect.groups))


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
