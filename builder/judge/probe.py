"""What would become of a visit if something came up in the room, or had never been asked."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from builder.judge.frame import Frame
from builder.judge.option import OptionJudge
from builder.judge.session import SessionJudge, asked, fired_rule
from builder.judge.space import Space, Value, Variable
from builder.judge.truth import OPEN, TRUE
from builder.model.card import site_of
from builder.model.fact import Fact
from builder.model.judgement import Doubt, Fired, OptionJudgement, Turn
from builder.model.rule import URGENCIES, Urgency

Recorded = dict[str, Value]


@dataclass(frozen=True)
class Probe:
    """One visit to ask such questions of: what it recorded, its frame, and a maker of other frames.

    `dating`: what phase and severity are worked out from. `read`: the same, with what the session is.
    `elsewhere`: what need not be asked of this client.
    """

    options: OptionJudge
    sessions: SessionJudge
    values: Recorded
    frame: Frame
    frame_without: Callable[[Recorded], Frame]
    dating: frozenset[str]
    read: frozenset[str]
    elsewhere: frozenset[str]

    @property
    def space(self) -> Space:
        """The decision space the visit lies in."""
        return self.options.space

    def turns(self, chosen: tuple[OptionJudgement, ...]) -> Iterator[Turn]:
        """What might come up where the session goes on: what would end it, and what surely changes nothing.

        A thing changes nothing where no rule, card or clock that bears on the visit reads it, or where it is
        there already and neither at its worst nor at its safest.
        """
        if self.frame.session.answer != "go_on":
            return
        bearing = self.read.union(*(self.options.names[one.card] for one in chosen))
        for name, variable in self.space.variables.items():
            if _is_flag(variable.fact) and self.values.get(name) == "no":
                if fired := tuple(self._ending(name)):
                    yield Turn(name, "yes", _most_urgent(fired), fired)
            elif _is_history(variable.fact) and self.values.get(name) != "yes" and name not in bearing:
                yield Turn(name, "yes")
            elif self._is_expected(name, variable):
                yield Turn(name, self.values[name], found=True)

    def doubts(
        self, chosen: tuple[OptionJudgement, ...], every: Iterable[OptionJudgement]
    ) -> Iterator[Doubt]:
        """Questions, and whether the session or a chosen option waits for their answers.

        `every`: all options and cards of the visit; what any of them waits for is never told to be idle.
        """
        if self.frame.session.answer == "ask_first":
            yield from self._of_session(every)
        elif self.frame.session.answer == "go_on":
            for place, option in enumerate(chosen):
                if option.right and self.options.cards[option.card].kind == "technique":
                    yield from self._of_option(place, option)

    def _ending(self, name: str) -> Iterator[Fired]:
        """The rules that refer once a flag is up; none for one that moves the phase or belongs elsewhere."""
        if name in self.dating | self.elsewhere:
            return
        state = list(self.frame.state)
        self.space.record(state, name, "yes")
        for rule, test in self.sessions.rules:
            if name in self.sessions.names[rule.id] and test(state) is TRUE:
                yield fired_rule(rule, TRUE)

    def _is_expected(self, name: str, variable: Variable) -> bool:
        fact, value = variable.fact, self.values.get(name)
        if (
            value is None
            or fact.group != "sign"
            or not fact.room
            or fact.worse_when not in ("higher", "lower")
        ):
            return False
        mask = variable.mask_of(value)
        ends = {1, 1 << (len(variable.cells) - 1)}
        return bool(mask) and mask not in ends

    def _of_session(self, every: Iterable[OptionJudgement]) -> Iterator[Doubt]:
        known = {rule.id: rule for rule, _ in (*self.sessions.consents, *self.sessions.rules)}
        for one in self.frame.session.ask:
            rules = tuple(fired_rule(known[name], OPEN) for name in one.rules)
            yield Doubt(one.fact, one.question, None, rules, matters=True)
        needed = {one.fact for one in self.frame.session.ask}
        needed |= {one.fact for option in every for one in option.ask}
        for name, variable in self.space.variables.items():
            settled = name in self.values or (name in self.elsewhere and variable.fact.screen)
            if settled and name not in needed and _is_asked(variable.fact):
                yield Doubt(name, asked(self.space, name, []).question, None)

    def _of_option(self, place: int, option: OptionJudgement) -> Iterator[Doubt]:
        names = self.options.names[option.card]
        for name, variable in self.space.variables.items():
            if not _is_history(variable.fact):
                continue
            question = asked(self.space, name, []).question
            if self.values.get(name) == "no" and name in names:
                if rules := self._waiting(name, option):
                    yield Doubt(name, question, place, rules, matters=True)
            elif name not in names and name not in self.read:
                yield Doubt(name, question, place)

    def _waiting(self, name: str, option: OptionJudgement) -> tuple[Fired, ...]:
        """What decides an option at worst, had one thing not been asked; nothing where it stays right."""
        frame = self.frame_without({key: one for key, one in self.values.items() if key != name})
        card = self.options.cards[option.card]
        judged = self.options.judge(frame, card, site_of(option.site), option.written)
        return tuple(one for one in judged.rules if one.effect == judged.at_worst != "ok")


def _is_flag(fact: Fact) -> bool:
    return fact.group == "red_flag" and fact.kind == "yes_no" and fact.worse_when == "yes"


def _is_history(fact: Fact) -> bool:
    """Whether it is what is asked of everyone before hands-on work and is no red flag."""
    plain = fact.kind == "yes_no" and fact.worse_when == "yes" and not fact.reported
    return fact.group == "contraindication" and plain and fact.asked_where is None


def _is_asked(fact: Fact) -> bool:
    """Whether it is what a therapist asks or looks for on the day."""
    return fact.group in ("red_flag", "contraindication", "sign", "consent") and not fact.reported


def _most_urgent(fired: Iterable[Fired]) -> Urgency:
    effects = {one.effect for one in fired}
    return next(one for one in reversed(URGENCIES) if one in effects)
