"""The judge: one rule set made ready, and every visit of every case answered by it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from copy import copy
from dataclasses import replace
from decimal import Decimal

from builder.judge.change import would_change
from builder.judge.frame import Frame
from builder.judge.named import conditions, cuts, dating, of_sessions
from builder.judge.option import OptionJudge
from builder.judge.phase import PhaseJudge
from builder.judge.probe import Probe
from builder.judge.session import SessionJudge
from builder.judge.severity import SeverityJudge
from builder.judge.space import Space, Value
from builder.judge.trial import DERIVED, Trial
from builder.judge.truth import FALSE, Known, Test, compiled
from builder.judge.values import values_of
from builder.model.card import Aim, Phase, site_of
from builder.model.case import Case, CaseOption, Visit
from builder.model.condition import AnyOf
from builder.model.judgement import DoseJudgement, OptionJudgement, SeverityJudgement, VisitJudgement
from builder.model.library import Content
from builder.model.tables import SEVERITIES, Severity

NEVER = AnyOf(())


class Judge:
    """All of a course's clinical content, compiled once."""

    def __init__(self, content: Content) -> None:
        """Cut the decision space at every bound any rule, cell, table or clock names."""
        written = {f"written.{name}": fact for name, fact in content.facts.written.items()}
        self.content = content
        facts = {**content.facts.facts, **written}
        self.space = Space(facts, conditions(content), cuts(content), content.words)
        rules = list(content.rules.values())
        self.severities = SeverityJudge(content.severity, self.space)
        self.phases = PhaseJudge(content.phases, self.space)
        self.sessions = SessionJudge(rules, self.space)
        derived = {
            "severity": self.severities.waits_for,
            "phase": self.phases.waits_for,
            "signs_behind": self.phases.waits_for,
            "session_urgency": self.sessions.waits_for,
        }
        self.options = OptionJudge(content.cards, rules, self.space, derived)
        self.dating = frozenset(dating(content))
        self.derived_from = self.dating.union(of_sessions(content))
        self.unasked = tuple(self._unasked())
        self.lesser: dict[str, Judge] = {}
        self.safest = {name: self._safest(name) for name, _ in self.unasked}

    def without(self, rule: str) -> Judge:
        """The same judge as if one rule had not been written."""
        if rule not in self.lesser:
            other = self.lesser[rule] = copy(self)
            other.lesser = {}
            other.sessions, other.options = self.sessions.without(rule), self.options.without(rule)
        return self.lesser[rule]

    def case(self, case: Case) -> tuple[VisitJudgement, ...]:
        """Every visit of a case, in order, with all there is to tell of it."""
        return self.told(case, self.probed(case, self.answered(case)))

    def answered(self, case: Case) -> tuple[VisitJudgement, ...]:
        """Every visit of a case, in order: session, phase, severity, and the author's options.

        That is all of it that is checked; the rest is many times the work and is told where it is shown. A
        grade a table gave holds until the next injury.
        """
        judged: list[VisitJudgement] = []
        for visit in case.visits:
            judged.append(self._answered(case, visit, earlier_grade(case, judged)))
        return tuple(judged)

    def probed(self, case: Case, answered: tuple[VisitJudgement, ...]) -> tuple[VisitJudgement, ...]:
        """The same visits, with what questions are made of: all cards, what may come up and must be asked."""
        return tuple(self._probed(case, number, answered) for number in range(len(answered)))

    def told(self, case: Case, answered: tuple[VisitJudgement, ...]) -> tuple[VisitJudgement, ...]:
        """The same visits, with what would change each option, and with every card at its usual dose."""
        return tuple(self._told(case, number, answered) for number in range(len(answered)))

    def _answered(self, case: Case, visit: Visit, earlier: Severity | None) -> VisitJudgement:
        values = values_of(case, visit, self.content.screening)
        frame = self.frame(values, visit.severity or case.severity, earlier)
        chosen, wrong = (tuple(self._options(frame, one)) for one in (visit.chosen, visit.wrong))
        doses, phase = tuple(self._doses(frame, visit.chosen)), frame.shown_phase(self.space)
        return VisitJudgement(
            visit.id, phase, frame.severity, frame.session, frame.aims, chosen, wrong, {}, doses
        )

    def _probed(self, case: Case, number: int, answered: tuple[VisitJudgement, ...]) -> VisitJudgement:
        visit, judged = case.visits[number], answered[number]
        grades = visit.severity or case.severity, earlier_grade(case, answered[:number])
        values = values_of(case, visit, self.content.screening)
        frame = self.frame(values, *grades)
        probe = Probe(
            self.options,
            self.sessions,
            values,
            frame,
            lambda less: self.frame(less, *grades, near=frame),
            self.dating,
            self.derived_from,
            frozenset(name for name, where in self.unasked if where(list(frame.state)) is FALSE),
        )
        cards = self._cards(frame)
        every = (*judged.chosen, *judged.wrong, *cards.values())
        turns, doubts = probe.turns(judged.chosen), probe.doubts(judged.chosen, every)
        return replace(judged, cards=cards, turns=tuple(turns), doubts=tuple(doubts))

    def _told(self, case: Case, number: int, answered: tuple[VisitJudgement, ...]) -> VisitJudgement:
        visit, judged = case.visits[number], answered[number]
        values = values_of(case, visit, self.content.screening)
        grades = visit.severity or case.severity, earlier_grade(case, answered[:number])
        frame = self.frame(values, *grades)
        trial = Trial(
            self.options,
            values,
            lambda state, opened: self.frame_of(state, *grades, opened=opened, near=frame),
            self.derived_from,
        )
        chosen, wrong = (
            tuple(_with_changes(trial, one) for one in options) for options in (judged.chosen, judged.wrong)
        )
        return replace(judged, chosen=chosen, wrong=wrong, cards=judged.cards or self._cards(frame))

    def _cards(self, frame: Frame) -> dict[str, OptionJudgement]:
        """Every card of the library at its usual dose and site."""
        return {
            card.id: self.options.judge(frame, card, site_of(card.usual.get("site")), _usual(card.usual))
            for card in self.content.cards.values()
        }

    def frame(
        self,
        values: Mapping[str, Value],
        declared: Severity | None,
        earlier: Severity | None,
        near: Frame | None = None,
    ) -> Frame:
        """A visit's recorded values made ready: what is derived is worked out in its order."""
        return self.frame_of(self.space.state(values), declared, earlier, values.get("hours"), near=near)

    def frame_of(
        self,
        state: list[int],
        declared: Severity | None,
        earlier: Severity | None,
        hours: Value | None = None,
        opened: frozenset[str] = frozenset(),
        near: Frame | None = None,
    ) -> Frame:
        """The frame of a state of masks; severity, then phase, then session, each from the ones before.

        `opened`: what is recorded and left open to see what might be; a grade is then whatever it may be.
        `near`: a frame of the same visit that is little different, by which this one is sooner found.
        """
        self._set_unasked(state, opened)
        alike = near if near and self.severities.same(state, near.state) else None
        severity = alike.severity if alike else self.severities.judge(state, declared, earlier)
        graded = SEVERITIES if opened & self.severities.reads else severity.possible
        self._set(state, "severity", graded)
        exact = hours if isinstance(hours, Decimal) else None
        return self._framed(state, severity, exact, opened, near)

    def _framed(
        self,
        state: list[int],
        severity: SeverityJudgement,
        hours: Decimal | None,
        opened: frozenset[str],
        near: Frame | None,
    ) -> Frame:
        """The frame of a state of which the severity is known."""
        before = list(state)
        phases = self._date(state)
        dated = list(state)
        known = self.sessions.known(dated, near.known if near else None)
        answer, urgency, urgencies = self.sessions.outcome(known)
        self._set(state, "session_urgency", urgencies)
        return Frame(
            tuple(state),
            phases,
            severity,
            answer,
            urgency,
            self._aims(answer, phases),
            known,
            self._urgent(known, opened) if opened else 0,
            near,
            dated=lambda: self.phases.judge(before, hours)[0],
            answered=lambda: self.sessions.judge(dated, known)[0],
        )

    def _date(self, state: list[int]) -> tuple[Phase, ...]:
        """Work out the possible phases, and how far the signs lie behind them."""
        phases, behind = self.phases.possible(state)
        self._set(state, "phase", phases)
        self._set(state, "signs_behind", [Decimal(one) for one in behind])
        return phases

    def recorded(self, values: Mapping[str, Value]) -> list[int]:
        """The state of a visit before anything is worked out from it."""
        state = self.space.state(values)
        self._set_unasked(state, frozenset())
        return state

    def _set_unasked(self, state: list[int], opened: frozenset[str]) -> None:
        """Take what need not be asked of this client at its safest, unless it is recorded."""
        for name, where in self.unasked:
            place, everything, safest = self.safest[name]
            if state[place] == everything and name not in opened and where(state) is FALSE:
                state[place] = safest

    def _unasked(self) -> Iterator[tuple[str, Test]]:
        """What need not be asked of everyone, with where it must."""
        for name, fact in self.content.facts.facts.items():
            if fact.extra or fact.asked_where:
                yield name, compiled(fact.asked_where or NEVER, self.space)

    def _safest(self, name: str) -> tuple[int, int, int]:
        variable = self.space.variables[name]
        return self.space.index[name], variable.everything, variable.safest

    def _urgent(self, known: Known, opened: frozenset[str]) -> int:
        least = self.sessions.least_urgency(known, opened | DERIVED)
        variable = self.space.variables["session_urgency"]
        return variable.everything & -variable.mask_of(least) if least else 0

    def _set(self, state: list[int], name: str, values: Iterable[Value]) -> None:
        variable = self.space.variables[name]
        state[self.space.index[name]] = sum({variable.mask_of(one) for one in values})

    def _aims(self, answer: str, phases: tuple[str, ...]) -> tuple[Aim, ...]:
        if answer == "refer":
            return ("refer",)
        if answer == "ask_first":
            return ("ask",)
        aims = self.content.phases.aims
        return tuple(dict.fromkeys(aims[phase] for phase in phases))  # type: ignore[index]

    def _options(self, frame: Frame, options: Iterable[CaseOption]) -> Iterator[OptionJudgement]:
        for one in options:
            yield self.options.judge(frame, self.content.cards[one.card], one.site, one.written)

    def _doses(self, frame: Frame, chosen: tuple[CaseOption, ...]) -> Iterator[DoseJudgement]:
        for index, option in enumerate(chosen):
            card = self.content.cards[option.card]
            for attribute, ladder in card.ladder.items():
                written = option.written.get(attribute)
                if isinstance(written, Decimal):
                    doses = sorted({*ladder, written})
                    answers = {
                        dose: self.options.answers(
                            frame, card, option.site, {**option.written, attribute: dose}
                        )[1]
                        for dose in doses
                    }
                    yield DoseJudgement(index, attribute, written, answers)


def earlier_grade(case: Case, judged: Sequence[VisitJudgement]) -> Severity | None:
    """The grade a table gave on the visits judged so far, for the visit after them."""
    grade: Severity | None = None
    for number, one in enumerate(judged):
        if one.severity.gradable:
            grade = one.severity.possible[0]
        following = number + 1
        if following < len(case.visits) and _hurt_again(case.visits[following], case.visits[number]):
            grade = None
    return grade


def _with_changes(trial: Trial, judged: OptionJudgement) -> OptionJudgement:
    told, more = would_change(trial, judged)
    return replace(judged, would_change=told, more_would=more)


def _usual(usual: Mapping[str, Value]) -> dict[str, Value]:
    return {name: value for name, value in usual.items() if name != "site"}


def _hurt_again(visit: Visit, before: Visit) -> bool:
    """Whether a visit knows of a later injury than the visit before; spans may be rounded."""
    if visit.since_reinjury is None:
        return False
    return before.since_reinjury is None or visit.since_injury - visit.since_reinjury > before.since_injury
