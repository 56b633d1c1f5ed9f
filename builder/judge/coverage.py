"""What a course's visits show of its rules: where each decides, and where it only just does not fire."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property

from builder.judge.frame import Frame
from builder.judge.judge import Judge, earlier_grade
from builder.judge.space import Space
from builder.judge.trial import DERIVED
from builder.judge.truth import FALSE, TRUE, Test, compiled
from builder.judge.values import values_of
from builder.model.case import Case, Visit
from builder.model.condition import Node, Recorded, atoms
from builder.model.judgement import Covered, OptionJudgement, VisitJudgement
from builder.model.tables import Severity

Answers = tuple[str | None, ...]


@dataclass(frozen=True)
class Seen:
    """One visit as judged, and all it takes to judge it again by a judge."""

    judge: Judge
    case: Case
    visit: Visit
    judged: VisitJudgement
    earlier: Severity | None

    @property
    def options(self) -> tuple[OptionJudgement, ...]:
        """What is said of each option the author offers."""
        return (*self.judged.chosen, *self.judged.wrong)

    def state(self, *, derived: bool) -> list[int]:
        """The visit's state, with what is derived where that is read."""
        return list(self._derived if derived else self._recorded)

    @cached_property
    def _recorded(self) -> tuple[int, ...]:
        return tuple(self.judge.recorded(values_of(self.case, self.visit, self.judge.content.screening)))

    @cached_property
    def _derived(self) -> tuple[int, ...]:
        return self._frame(self.judge).state

    def answers(self) -> Answers:
        """How the session ends, how soon, and what is said of each option at worst."""
        session = self.judged.session
        return (session.answer, session.urgency, *(one.at_worst for one in self.options))

    def answers_of(self, judge: Judge) -> Answers:
        """The same by another judge."""
        frame, cards = self._frame(judge), judge.content.cards
        offered = (*self.visit.chosen, *self.visit.wrong)
        said = (judge.options.answers(frame, cards[one.card], one.site, one.written) for one in offered)
        return (frame.answer, frame.urgency, *(worst for _, worst in said))

    def _frame(self, judge: Judge) -> Frame:
        values = values_of(self.case, self.visit, judge.content.screening)
        return judge.frame(values, self.visit.severity or self.case.severity, self.earlier)


def covered(
    judge: Judge,
    cases: Mapping[str, Case],
    judged: Mapping[str, tuple[VisitJudgement, ...]],
    before: Iterable[Covered],
) -> tuple[Covered, ...]:
    """Each of these rules, with what some visit of these cases shows of it beside what was shown before."""
    visits = [one for case in cases.values() for one in _seen(judge, case, judged[case.id])]
    alone = {name for one in visits for option in one.options for name in _rests_on(option)}
    return tuple(_shown(judge, visits, alone, one) for one in before)


def nothing_shown(rules: Iterable[str]) -> tuple[Covered, ...]:
    """Every rule before any visit is looked at."""
    return tuple(Covered(rule, decides=False, near_miss=False) for rule in rules)


def _shown(judge: Judge, visits: list[Seen], alone: set[str], before: Covered) -> Covered:
    if before.decides and before.near_miss:
        return before
    name, when = before.rule, judge.content.rules[before.rule].when
    test, derived = compiled(when, judge.space), any(atom.name in DERIVED for atom in atoms(when))
    states = (one.state(derived=derived) for one in visits)
    decides = before.decides or name in alone or any(_turns(judge, name, test, visits, derived=derived))
    misses = before.near_miss or any(is_near_miss(when, test, judge.space, state) for state in states)
    return Covered(name, decides, misses)


def _rests_on(option: OptionJudgement) -> set[str]:
    """What alone an option is answered by: the worst that bears on it wins, and only this is as bad."""
    worst = {one.id for one in option.rules if one.effect == option.at_worst != "ok"}
    return worst if len(worst) == 1 else set()


def _turns(judge: Judge, rule: str, test: Test, visits: Iterable[Seen], *, derived: bool) -> Iterator[bool]:
    """For each visit, whether it ends otherwise without a rule about the session or about consent.

    Such a rule may change everything: the visit is judged again where it may fire.
    """
    if judge.sessions.knows(rule):
        other = judge.without(rule)
        for one in visits:
            may_fire = test(one.state(derived=derived)) is not FALSE
            yield may_fire and one.answers_of(other) != one.answers()


def is_near_miss(when: Node, test: Test, space: Space, state: list[int]) -> bool:
    """Whether a condition surely does not hold, and surely would with one fact recorded otherwise."""
    if test(state) is not FALSE:
        return False
    return any(test(other) is TRUE for other in _one_fact_off(when, space, state))


def _one_fact_off(when: Node, space: Space, state: list[int]) -> Iterator[list[int]]:
    for name in dict.fromkeys(atom.name for atom in atoms(when) if not isinstance(atom, Recorded)):
        for place in range(len(space.variables[name].cells)):
            other = list(state)
            other[space.index[name]] = 1 << place
            yield other


def _seen(judge: Judge, case: Case, judged: tuple[VisitJudgement, ...]) -> Iterator[Seen]:
    for number, visit in enumerate(case.visits):
        yield Seen(judge, case, visit, judged[number], earlier_grade(case, judged[:number]))
