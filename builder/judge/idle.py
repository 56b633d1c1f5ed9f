"""Proofs that everything decides: each rule answers for something, each fact that warns changes an answer."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from builder.doors.solver import Solver
from builder.judge.encode import Encoding, sites_of
from builder.judge.reach import Push, Reach
from builder.judge.space import RECORDED, Space
from builder.model.card import ANSWERS
from builder.model.condition import atoms
from builder.model.judgement import Hole
from builder.model.library import Content
from builder.model.rule import URGENCIES, Rule

WARNING = ("red_flag", "contraindication", "consent", "clearance")
WITH_EVERY_CASE = (
    "injury", "tissue", "region", "age", "hours", "hours_since_first", "reinjured", "severity",
)  # fmt: skip
FREE_OF = {"severity", "phase", "signs_behind", "session_urgency"}


def idle_rules(proof: Encoding, reach: Reach) -> Iterator[Hole]:
    """Rules that can fire, and without which every answer to every client would be the same."""
    for rule in proof.content.rules.values():
        fires = proof.solver.can_be([proof.fires[rule.id]])
        if fires and not _refers(proof, rule) and not _answers(proof, reach, rule):
            yield Hole("never_decides", rule.id, "Something else says as much wherever it fires.")


def _refers(proof: Encoding, rule: Rule) -> bool:
    if rule.session is None:
        return False
    urgent = URGENCIES[URGENCIES.index(rule.session.urgency) :]
    others = [
        -proof.fires[one.id]
        for one in proof.content.rules.values()
        if one.session and one.session.urgency in urgent and one.id != rule.id
    ]
    return proof.solver.can_be([proof.fires[rule.id], *others])


def _answers(proof: Encoding, reach: Reach, rule: Rule) -> bool:
    return any(
        proof.solver.can_be([own.literal, *reach.here(site), *_without(pushes, own)])
        for (_, site), pushes in reach.pushes.items()
        for own in pushes
        if own.rule == rule.id
    )


def _without(pushes: list[Push], own: Push) -> list[int]:
    return [-one.literal for one in pushes if one.rule != own.rule and one.rank >= own.rank]


class Twins:
    """Two visits in one solver that may be held alike in every fact but one."""

    def __init__(self, content: Content, space: Space, solver: Solver) -> None:
        """Encode both, tie them fact by fact, and say where their answers differ."""
        self.content, self.solver = content, solver
        self.one, self.other = Encoding(content, space, solver), Encoding(content, space, solver)
        self.alike = {name: self._tied(name) for name in self.one.cells if name not in FREE_OF}
        grades = zip(self.one.known.values(), self.other.known.values(), strict=True)
        self.same_grade = [self._same([pair]) for pair in grades]
        self.differ = self._differ()

    def decides(self, fact: str) -> bool:
        """Whether two visits that differ in this fact alone may be answered differently."""
        return self.solver.can_be([*self._but(fact), self.differ])

    def refers(self, flag: str) -> bool:
        """Whether some visit goes on without this flag and is referred with it."""
        goes_on = self.one.word("session_urgency", "none")
        referred = -self.other.word("session_urgency", "none")
        pair = [self.one.word(flag, "no"), self.other.word(flag, "yes"), goes_on, referred]
        return self.solver.can_be([*self._but(flag), *pair])

    def _but(self, fact: str) -> list[int]:
        moved = {fact, RECORDED + fact}
        return [*self.same_grade, *(literal for name, literal in self.alike.items() if name not in moved)]

    def _tied(self, name: str) -> int:
        return self._same(zip(self.one.cells[name], self.other.cells[name], strict=True))

    def _same(self, pairs: Iterable[tuple[int, int]]) -> int:
        tied = self.solver.fresh()
        for a, b in pairs:
            self.solver.add([[-tied, -a, b], [-tied, a, -b]])
        return tied

    def _differ(self) -> int:
        pair = (Reach(self.one), Reach(self.other))
        found = [
            self._apart(*(reach.at_least(card.id, site, rank) for reach in pair), here=pair[0].here(site))
            for card in self.content.cards.values()
            for site in sites_of(card)
            for rank in range(1, len(ANSWERS))
        ]
        urgencies = zip(self.one.cells["session_urgency"], self.other.cells["session_urgency"], strict=True)
        return self.one.any_of([*found, *(self._apart(a, b, here=[]) for a, b in urgencies)])

    def _apart(self, a: int, b: int, *, here: list[int]) -> int:
        apart = self.solver.fresh()
        self.solver.add([[-apart, a, b], [-apart, -a, -b], *([-apart, one] for one in here)])
        return apart


def idle_facts(content: Content, space: Space) -> Iterator[Hole]:
    """Facts that warn and change no answer, flags that never refer by themselves, and facts nothing reads."""
    read = {*_read(content), *content.facts.teaching}
    with Solver() as solver:
        twins = Twins(content, space, solver)
        for name, fact in content.facts.facts.items():
            if fact.group == "red_flag" and not twins.refers(name):
                yield Hole("flag_goes_on", name, f"{fact.label.lower()}: {fact.in_words('yes')}")
            elif fact.group in WARNING and not twins.decides(name):
                yield Hole("fact_changes_nothing", name, "Every card answers the same, whatever is recorded.")
            elif name not in read:
                yield Hole("fact_unread", name, "No rule, sign, table or screening set names it.")


def _read(content: Content) -> Iterator[str]:
    book, tables = content.phases, content.severity.tables.values()
    nodes = [rule.when for rule in content.rules.values()]
    nodes += [book.does_not_apply, *(sign.when for sign in (*book.signs, *book.doubt))]
    nodes += [table.applies for table in tables]
    nodes += [band.when for table in tables for band in table.raised]
    nodes += [fact.asked_where for fact in content.facts.facts.values() if fact.asked_where]
    yield from (atom.name for node in nodes for atom in atoms(node))
    yield from (name for table in tables for name in (table.measure, table.recalled) if name)
    yield from (name for one in content.screening.sets.values() for name in one.covers)
    yield from (name for name, fact in content.facts.facts.items() if fact.excludes)
    yield from (*WITH_EVERY_CASE, *FREE_OF)
