"""The decision space as clauses: a literal for each cell, and one for the truth of each condition."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from decimal import Decimal
from itertools import product

from builder.doors.solver import Solver
from builder.judge.phase import HEALING, phase_at
from builder.judge.space import RECORDED, Space
from builder.model.card import SITES, Card
from builder.model.condition import AllOf, Among, AnyOf, Node, Not, Recorded, Within, atoms
from builder.model.library import Content
from builder.model.rule import URGENCIES, OptionEffect, Rule
from builder.model.tables import SEVERITIES, Severity, SeverityTable


class Encoding:
    """Every client there may be, as models of one set of clauses.

    `recorded`: those known in full; `known`: the grade that holds where no table settles it.
    """

    def __init__(self, content: Content, space: Space, solver: Solver) -> None:
        """Encode facts, phase, session and every rule's condition."""
        self.content, self.space, self.solver = content, space, solver
        self._literals: dict[Node, int] = {}
        self._any: dict[frozenset[int], int] = {}
        self._open: dict[tuple[str, tuple[str, ...]], int] = {}
        self.cells = {name: [solver.fresh() for _ in one.cells] for name, one in space.variables.items()}
        for cells in self.cells.values():
            self._exactly_one(cells)
        self.beyond: list[int] = []
        self.known: dict[Severity, int] = {grade: solver.fresh() for grade in SEVERITIES}
        self.recorded = [cells[1] for name, cells in self.cells.items() if name.startswith(RECORDED)]
        self.fires = {rule.id: self.literal(rule.when) for rule in content.rules.values()}
        self.effects = {card.id: _about(card, content.rules) for card in content.cards.values()}
        self._excluded()
        self._severity()
        self._phase()
        self._session()

    def word(self, name: str, value: str) -> int:
        """The literal of one word of a variable."""
        return self.cells[name][self.space.variables[name].place[value]]

    def literal(self, node: Node) -> int:
        """A literal that is true exactly where the condition holds."""
        if node not in self._literals:
            self._literals[node] = self._literal(node)
        return self._literals[node]

    def _literal(self, node: Node) -> int:
        if isinstance(node, Not):
            return -self.literal(node.part)
        if isinstance(node, AllOf):
            return -self.any_of([-self.literal(part) for part in node.parts])
        if isinstance(node, AnyOf):
            return self.any_of([self.literal(part) for part in node.parts])
        if isinstance(node, Recorded):
            return self.cells[RECORDED + node.name][1]
        mask = self.space.mask(node)
        return self.any_of([cell for index, cell in enumerate(self.cells[node.name]) if mask >> index & 1])

    def any_of(self, literals: list[int]) -> int:
        """A literal that is true exactly where at least one of these is."""
        key = frozenset(literals)
        if key not in self._any:
            out = self._any[key] = self.solver.fresh()
            self.solver.add([[-out, *literals], *([out, -one] for one in literals)])
        return self._any[key]

    def is_open(self, card: Card, *sites: str) -> int:
        """True where the card may be used at one of these sites."""
        key = card.id, sites
        if key not in self._open:
            self._open[key] = self.any_of([self._is_open(card, site) for site in sites])
        return self._open[key]

    def _is_open(self, card: Card, site: str) -> int:
        """True where the card's cell is OK and no rule answers against it."""
        cells = [self.word("phase", row_phase) for row_phase in _ok_phases(card, site)]
        against = [
            self.fires[rule.id]
            for rule, effect in self.about(card, site)
            if effect.answer and not _tests_written(rule)
        ]
        return -self.any_of([-self.any_of(cells), *against])

    def about(self, card: Card, site: str) -> Iterator[tuple[Rule, OptionEffect]]:
        """Every effect on a card at a site, with its rule."""
        return (one for one in self.effects[card.id] if not one[1].sites or site in one[1].sites)

    def _exactly_one(self, cells: list[int]) -> None:
        self.solver.add([cells, *([-a, -b] for i, a in enumerate(cells) for b in cells[i + 1 :])])

    def _excluded(self) -> None:
        for name, variable in self.space.variables.items():
            for other in variable.fact.excludes:
                self.solver.add([[-self.word(name, "yes"), self.word(other, "no")]])

    def _severity(self) -> None:
        """The grade of the first table that applies, as the judge works it out; else the known one."""
        self._exactly_one(list(self.known.values()))
        before: list[int] = []
        for table in self.content.severity.tables.values():
            applies = self.literal(table.applies)
            here = -self.any_of([-applies, *before])
            before.append(applies)
            window = self.literal(
                Within("hours", (("at_least", table.not_before), ("at_most", table.not_after)))
            )
            (self._at_least if table.least else self._exactly)(table, here, window)
        self._known_where(before)

    def _at_least(self, table: SeverityTable, here: int, window: int) -> None:
        """The worst of what is known, what the measure shows in its window, and what raises it on any day."""
        shown = [(one.grade, -self.any_of([-window, -self.literal(one.when)])) for one in table.bands]
        raised = [(one.grade, self.literal(one.when)) for one in table.raised]
        found = [*shown, *raised, *self.known.items()]
        at = [self.any_of([literal for one, literal in found if one == grade]) for grade in SEVERITIES]
        for place, grade in enumerate(SEVERITIES):
            self.solver.add([[-here, -at[place], self.word("severity", grade), *at[place + 1 :]]])

    def _exactly(self, table: SeverityTable, here: int, window: int) -> None:
        """What the measure shows in its window, else what is recalled of it, else what is known."""
        recalled = [self.word("reinjured", "no")] if table.recalled else []
        for band in table.bands:
            grade = self.word("severity", band.grade)
            self.solver.add([[-here, -window, -self.literal(band.when), grade]])
            if table.recalled and isinstance(band.when, Among | Within):
                then = self.literal(replace(band.when, name=table.recalled))
                self.solver.add([[-here, window, -recalled[0], -then, grade]])
        self._known_where([-here, window, *recalled])

    def _known_where(self, otherwise: list[int]) -> None:
        self.solver.add(
            [*otherwise, -known, self.word("severity", grade)] for grade, known in self.known.items()
        )

    def _phase(self) -> None:
        book = self.content.phases
        none = self.literal(book.does_not_apply)
        clock = self._clock()
        holds = [(HEALING.index(sign.no_later_than), self.literal(sign.when)) for sign in book.signs]
        phases = [self.word("phase", phase) for phase in HEALING]
        self.solver.add([[-none, self.word("phase", "none")], [none, -self.word("phase", "none")]])
        for at, phase in enumerate(phases):
            later = [self.any_of(clock[at:]), *(-sign for cap, sign in holds if cap < at)]
            self.solver.add([[-phase, one] for one in later])
            self.solver.add([[-phase, clock[at], *(sign for cap, sign in holds if cap == at)]])
        self._behind(clock, phases)

    def _behind(self, clock: list[int], phases: list[int]) -> None:
        place = self.space.variables["signs_behind"].place
        cells = [self.cells["signs_behind"][place[Decimal(one)]] for one in range(len(HEALING))]
        self.solver.add([[-self.word("phase", "none"), cells[0]]])
        for (late, of_clock), (at, phase) in product(enumerate(clock), enumerate(phases)):
            if late >= at:
                self.solver.add([[-of_clock, -phase, cells[late - at]]])

    def _clock(self) -> list[int]:
        by_phase: list[list[int]] = [[] for _ in HEALING]
        hours = self.space.variables["hours"].cells
        for clock, (index, cell) in product(self.content.phases.clocks, enumerate(hours)):
            at = HEALING.index(phase_at(clock, cell.value))  # type: ignore[arg-type]
            parts = [
                self.word("tissue", clock.tissue),
                self.word("severity", clock.severity),
                self.cells["hours"][index],
            ]
            by_phase[at].append(-self.any_of([-one for one in parts]))
        return [self.any_of(literals) for literals in by_phase]

    def _session(self) -> None:
        rules = [rule for rule in self.content.rules.values() if rule.session]
        higher: list[int] = []
        for urgency in reversed(URGENCIES):
            here = self.any_of(
                [self.fires[rule.id] for rule in rules if rule.session and rule.session.urgency == urgency]
            )
            word = self.word("session_urgency", urgency)
            self.solver.add([[-word, here], *([-word, -one] for one in higher), [word, -here, *higher]])
            higher.append(here)
        self.solver.add([[-self.word("session_urgency", "none"), -one] for one in higher])


def _ok_phases(card: Card, site: str) -> list[str]:
    return [phase for row in card.baseline if row.answer == "ok" and site in row.site for phase in row.phase]


def _tests_written(rule: Rule) -> bool:
    return any(atom.name.startswith("written.") for atom in atoms(rule.when))


def _about(card: Card, rules: Mapping[str, Rule]) -> list[tuple[Rule, OptionEffect]]:
    return [(rule, one) for rule in rules.values() for one in rule.options if one.addresses(card)]


def sites_of(card: Card) -> tuple[str, ...]:
    """The sites a card may be written for; an action has no site that matters."""
    return SITES if card.kind == "technique" else SITES[:1]
