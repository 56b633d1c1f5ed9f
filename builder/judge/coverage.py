"""What a course's visits show of its rules: where each decides, and where it only just does not fire."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from builder.judge.frame import Frame
from builder.judge.judge import Judge, earlier_grade
from builder.judge.space import Space, Value
from builder.judge.truth import Test, Truth, compiled
from builder.judge.values import values_of
from builder.model.case import Case, CaseOption
from builder.model.condition import Node, Recorded, atoms
from builder.model.judgement import Covered, VisitJudgement
from builder.model.tables import Severity

Answers = tuple[str | None, ...]


@dataclass(frozen=True)
class Seen:
    """One visit with all it takes to judge it again: what is recorded, the grades, what is offered."""

    values: Mapping[str, Value]
    grades: tuple[Severity | None, Severity | None]
    offered: tuple[CaseOption, ...]

    def frame(self, judge: Judge) -> Frame:
        """The visit made ready by a judge."""
        return judge.frame(self.values, *self.grades)

    def answers(self, judge: Judge, frame: Frame) -> Answers:
        """How the session ends, how soon, and what is said of each option at worst."""
        cards = judge.content.cards
        said = (judge.options.answers(frame, cards[one.card], one.site, one.written) for one in self.offered)
        return (frame.session.answer, frame.session.urgency, *(worst for _, worst in said))


def covered(
    judge: Judge, cases: Mapping[str, Case], judged: Mapping[str, tuple[VisitJudgement, ...]]
) -> tuple[Covered, ...]:
    """Every rule, in order, with what some visit of these cases shows of it."""
    visits = [one for case in cases.values() for one in _seen(judge, case, judged[case.id])]
    frames = [one.frame(judge) for one in visits]
    answers = [one.answers(judge, frame) for one, frame in zip(visits, frames, strict=True)]
    states = [list(frame.state) for frame in frames]
    found = []
    for rule in judge.content.rules.values():
        test, other = compiled(rule.when, judge.space), judge.without(rule.id)
        decides = any(
            test(state) is not Truth.FALSE and one.answers(other, one.frame(other)) != answer
            for one, state, answer in zip(visits, states, answers, strict=True)
        )
        misses = any(is_near_miss(rule.when, test, judge.space, state) for state in states)
        found.append(Covered(rule.id, decides, misses))
    return tuple(found)


def is_near_miss(when: Node, test: Test, space: Space, state: list[int]) -> bool:
    """Whether a condition surely does not hold, and surely would with one fact recorded otherwise."""
    if test(state) is not Truth.FALSE:
        return False
    return any(test(other) is Truth.TRUE for other in _one_fact_off(when, space, state))


def _one_fact_off(when: Node, space: Space, state: list[int]) -> Iterator[list[int]]:
    for name in dict.fromkeys(atom.name for atom in atoms(when) if not isinstance(atom, Recorded)):
        for place in range(len(space.variables[name].cells)):
            other = list(state)
            other[space.index[name]] = 1 << place
            yield other


def _seen(judge: Judge, case: Case, judged: tuple[VisitJudgement, ...]) -> Iterator[Seen]:
    for number, visit in enumerate(case.visits):
        yield Seen(
            values_of(case, visit, judge.content.screening),
            (visit.severity or case.severity, earlier_grade(case, judged[:number])),
            (*visit.chosen, *visit.wrong),
        )
