"""What the cards and rules say of one option as written: as it surely is, and at worst."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping
from copy import copy

from builder.judge.bearing import Bearing, Cell, Ranks, bearings, by_limits, grid, met, ranks_of
from builder.judge.frame import Frame, Kept
from builder.judge.said import Said, Tally
from builder.judge.session import asked, fired_rule
from builder.judge.space import Space, Spots, Value
from builder.judge.truth import FALSE, OPEN, TRUE, Conditions, Truth, open_facts
from builder.model.card import ANSWERS, Answer, Card, CellRow, Phase, Site
from builder.model.condition import atoms
from builder.model.judgement import Asked, Fired, OptionJudgement
from builder.model.rule import Rule

Waits = Callable[[list[int]], list[str]]


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
        self.spots: dict[tuple[str, Value], Spots] = {}
        self.serves = {card.id: frozenset(card.serves) for card in cards.values()}
        self.effects = bearings(rules, cards, space)
        self.asked = _together(self.effects, space)
        self.names = {card.id: self._names(card) for card in cards.values()}

    def without(self, rule: str) -> OptionJudge:
        """The same without one rule."""
        other = copy(self)
        other.effects = {name: effects for name, effects in self.effects.items() if name != rule}
        other.asked = _together(other.effects, self.space)
        return other

    def judge(self, frame: Frame, card: Card, site: Site, written: Mapping[str, Value]) -> OptionJudgement:
        """The answers for one option in a visit, with everything that bears on them."""
        kept = self._kept(frame)
        state = self.with_written(frame, site, written)
        tally = Tally()
        self._baseline(tally, frame.phases, card, site, state)
        self._rules(tally, self._live(kept, card, site, state), state)
        serves = self.serves[card.id].issuperset(frame.aims)
        return OptionJudgement(
            card=card.id,
            site=site,
            written=dict(written),
            answer=ANSWERS[tally.sure],
            at_worst=ANSWERS[tally.worst],
            serves_aim=serves,
            right=tally.worst == 0 and serves,
            ask=self._asked(tally.waiting, kept, frame) if tally.waiting else (),
            rules=tally.reasons(),
            change=tally.change(),
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
            for cell in self._cells(frame.phases, card, site)
        ]
        sure, worst = min(one[0] for one in cells), max(one[1] for one in cells)
        for one, when in self._live(self._kept(frame), card, site, state):
            certain = when is TRUE or (moving is not None and self._stays(one, frame, state, moving))
            if one.needs:
                surely, maybe = ranks_of(one.needs, state, moving, certain=certain)
            else:
                surely, maybe = (one.rank if certain else 0), one.rank
            sure, worst = max(sure, surely), max(worst, maybe)
        return sure, worst

    def with_written(self, frame: Frame, site: Site, written: Mapping[str, Value]) -> list[int]:
        """The visit's state with what an option has written."""
        state = list(frame.state)
        for item in (("site", site), *written.items()):
            for index, mask in self.spots.get(item) or self._spots(*item):
                state[index] = mask
        return state

    def _spots(self, name: str, value: Value) -> Spots:
        spots = self.spots[name, value] = self.space.spots(f"written.{name}", value)
        return spots

    def _stays(self, one: Bearing, frame: Frame, state: list[int], moving: frozenset[str]) -> bool:
        """Whether an effect that is open can not be ruled out, whatever becomes of `moving`."""
        if one.names.isdisjoint(moving):
            return True
        if not frame.urgent or "session_urgency" not in one.names:
            return False
        urgent = list(state)
        urgent[self.space.index["session_urgency"]] = frame.urgent
        return one.when(urgent) is TRUE

    def _kept(self, frame: Frame) -> Kept:
        """What is worked out once of a visit; first of all each effect that may fire.

        An effect comes with its truth, unless that is the option's to say.
        """
        kept = frame.kept.get(self)
        if kept is None:
            near = self._kept(frame.near).known if frame.near else None
            known = self.asked.known(list(frame.state), near)
            live = [
                (one, None if one.by_option else truth)
                for truth, effects in zip(known.truths, self.effects.values(), strict=True)
                if truth or effects[0].by_option
                for one in effects
            ]
            kept = frame.kept[self] = Kept(known, live)
        return kept

    def _live(self, kept: Kept, card: Card, site: Site, state: list[int]) -> list[tuple[Bearing, Truth]]:
        """The effects that fire or may fire on an option, each with its truth."""
        live = kept.on_card.get(card.id)
        if live is None:
            live = kept.on_card[card.id] = [item for item in kept.live if card.id in item[0].cards]
        found = []
        for one, known in live:
            if site in one.sites:
                when = one.when(state) if known is None else known
                if when is not FALSE:
                    found.append((one, when))
        return found

    def _cells(self, phases: tuple[Phase, ...], card: Card, site: Site) -> list[Cell]:
        """The different cells that may hold, in the order of the phases."""
        cells = self.grids[card.id]
        return list(dict.fromkeys([cells[phase, site] for phase in phases]))

    def _baseline(
        self, tally: Tally, phases: tuple[Phase, ...], card: Card, site: Site, state: list[int]
    ) -> None:
        cells = self._cells(phases, card, site)
        alone = len(cells) == 1
        found = [self._by_cell(cell, card, state, alone=alone) for cell in cells]
        sure = min([one.sure for one in found])
        for one in found:
            if one.worst or alone:
                tally.take(one, sure)
        if sure < tally.worst and not alone:
            tally.waiting.append(_baseline_of(card))

    def _by_cell(self, cell: Cell, card: Card, state: list[int], *, alone: bool) -> Said:
        code = met(cell.limits, state, alone)
        said = cell.said.get(code)
        if said is None:
            sure, worst, changes = by_limits(cell.limits, state, cell.rank, self.space, certain=True)
            fires = alone and sure == worst
            fired = _fired_cell(card, cell.row, ANSWERS[worst], changes, fires=fires)
            said = cell.said[code] = Said(sure, worst, fired, changes)
        return said

    def _rules(self, tally: Tally, live: list[tuple[Bearing, Truth]], state: list[int]) -> None:
        for one, when in live:
            said = self._by_rule(one, when, state)
            if said.worst:
                tally.take(said, said.sure)
                if when is OPEN:
                    tally.waiting.append(one.rule.id)

    def _by_rule(self, one: Bearing, when: Truth, state: list[int]) -> Said:
        code = met(one.needs, state, when)
        said = one.said.get(code)
        if said is None:
            certain = when is TRUE
            sure, worst, changes = by_limits(one.needs, state, one.rank, self.space, certain=certain)
            truth = TRUE if sure == worst else OPEN
            fired = fired_rule(one.rule, truth, ANSWERS[worst], "; ".join(changes) or None)
            said = one.said[code] = Said(sure, worst, fired, changes)
        return said

    def _asked(self, waiting: list[str], kept: Kept, frame: Frame) -> tuple[Asked, ...]:
        key = tuple(waiting)
        if key not in kept.asked:
            state, found = list(frame.state), defaultdict[str, list[str]](list)
            for source in waiting:
                for name in self._waits_for(source, state):
                    if name not in kept.waits:
                        kept.waits[name] = tuple(self._to_ask(name, state))
                    for fact in kept.waits[name]:
                        found[fact].append(source)
            kept.asked[key] = tuple(asked(self.space, fact, rules) for fact, rules in found.items())
        return kept.asked[key]

    def _waits_for(self, source: str, state: list[int]) -> list[str]:
        """What a rule waits for, or a card's cell: its phase."""
        effects = self.effects.get(source)
        return open_facts(effects[0].rule.when, self.space, state) if effects else ["phase"]

    def _to_ask(self, name: str, state: list[int]) -> Iterator[str]:
        """The facts a client can be asked for: what is derived waits for others, what is written for none."""
        if name in self.derived:
            for other in self.derived[name](state):
                yield from self._to_ask(other, state)
        elif not name.startswith("written."):
            yield name

    def _names(self, card: Card) -> frozenset[str]:
        """Every variable that a limit of the card or a rule about it names."""
        nodes = [node for row in card.baseline for node in row.limits.values()]
        for one in (one for effects in self.effects.values() for one in effects if card.id in one.cards):
            nodes += [one.rule.when, *one.effect.needs.values()]
        return frozenset(atom.name for node in nodes for atom in atoms(node))


def _together(effects: Mapping[str, list[Bearing]], space: Space) -> Conditions:
    """The conditions of the rules that have effects, in their order."""
    return Conditions([(some[0].rule.when, some[0].when) for some in effects.values()], space)


def _baseline_of(card: Card) -> str:
    return f"baseline.{card.id}"


def _fired_cell(card: Card, row: CellRow, effect: Answer, changes: tuple[str, ...], *, fires: bool) -> Fired:
    return Fired(
        id=_baseline_of(card),
        title=card.name,
        truth="fires" if fires else "open",
        effect=effect,
        why=row.why,
        strength=row.strength,
        source=row.source,
        contested=row.contested,
        reviewed=card.reviewed is not None,
        change="; ".join(changes) or None,
    )
