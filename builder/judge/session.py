"""What a visit asks of the session itself: go on, ask first, or stop and refer."""

from __future__ import annotations

from collections.abc import Sized
from copy import copy

from builder.judge.space import Space
from builder.judge.truth import OPEN, TRUE, Conditions, Known, Test, Truth, compiled, open_facts
from builder.model.condition import atoms
from builder.model.judgement import Asked, Fired, SessionJudgement
from builder.model.rule import URGENCIES, FirstAction, Rule, SessionEffect, Urgency


class SessionJudge:
    """The rules with an effect on the session, ready to judge."""

    def __init__(self, rules: list[Rule], space: Space) -> None:
        """Compile every rule that refers, and every rule that waits for a consent."""
        self.space = space
        self.consents = [(rule, compiled(rule.when, space)) for rule in rules if _is_consent(rule, space)]
        self.rules: list[tuple[Rule, Test]] = [
            (rule, compiled(rule.when, space)) for rule in rules if rule.session
        ]
        self.asked = _together(self.rules, self.space)
        self.names = {rule.id: frozenset(atom.name for atom in atoms(rule.when)) for rule, _ in self.rules}

    def without(self, rule: str) -> SessionJudge:
        """The same without one rule."""
        other = copy(self)
        other.consents = [one for one in self.consents if one[0].id != rule]
        other.rules = [one for one in self.rules if one[0].id != rule]
        other.asked = _together(other.rules, self.space)
        return other

    def known(self, state: list[int], near: Known | None = None) -> Known:
        """What is true of each rule in a state that is not changed any more; `near` is known already."""
        return self.asked.known(state, near)

    def knows(self, rule: str) -> bool:
        """Whether a rule bears on the session."""
        return any(one.id == rule for one, _ in (*self.consents, *self.rules))

    def judge(self, state: list[int], known: Known | None = None) -> tuple[SessionJudgement, set[str]]:
        """The session's answer, and every urgency it may have (`none` where it may go on).

        `known`: what is true of each rule, where that has been asked before.
        """
        live, sure, maybe = self._live(known or self.known(state))
        urgency, possible = _urgencies(sure, maybe)
        ask = self._ask(state, [*self._waiting(state), *maybe])
        fired = tuple(fired_rule(rule, truth) for rule, truth in live)
        answer = _answer(sure, ask)
        return SessionJudgement(answer, urgency, () if sure else ask, fired, _first_action(sure)), possible

    def outcome(self, known: Known) -> tuple[str, Urgency | None, set[str]]:
        """The same without the rules and questions behind it: the answer, how soon, how soon it may be."""
        _, sure, maybe = self._live(known)
        urgency, possible = _urgencies(sure, maybe)
        rules = [] if sure else [*self._waiting(known.state), *maybe]
        return _answer(sure, self._to_ask(known.state, rules)), urgency, possible

    def least_urgency(self, known: Known, moving: frozenset[str]) -> Urgency | None:
        """The highest urgency that some rule gives for sure or at worst, whatever becomes of `moving`."""
        return _highest(
            [
                rule
                for (rule, _), truth in zip(self.rules, known.truths, strict=True)
                if truth is TRUE or (truth is OPEN and self.names[rule.id].isdisjoint(moving))
            ]
        )

    def waits_for(self, state: list[int]) -> list[str]:
        """What the urgency waits for: every open fact of a rule that may fire."""
        maybe = [rule for rule, test in self.rules if test(state) is OPEN]
        return [name for rule in maybe for name in open_facts(rule.when, self.space, state)]

    def _live(self, known: Known) -> tuple[list[tuple[Rule, Truth]], list[Rule], list[Rule]]:
        """The rules that fire or may, each with its truth; those that fire; and those that may."""
        asked = zip(self.rules, known.truths, strict=True)
        live: list[tuple[Rule, Truth]] = [(one[0], truth) for one, truth in asked if truth]
        sure = [rule for rule, truth in live if truth is TRUE]
        return live, sure, [rule for rule, truth in live if truth is OPEN]

    def _waiting(self, state: list[int]) -> list[Rule]:
        """The rules that wait for a consent."""
        return [rule for rule, test in self.consents if test(state) is OPEN]

    def _ask(self, state: list[int], maybe: list[Rule]) -> tuple[Asked, ...]:
        waiting = self._to_ask(state, maybe)
        return tuple(asked(self.space, name, rules) for name, rules in waiting.items())

    def _to_ask(self, state: list[int], maybe: list[Rule]) -> dict[str, list[str]]:
        """Every fact that is to be asked for, with the rules that wait for it."""
        waiting: dict[str, list[str]] = {}
        for rule in maybe:
            for name in open_facts(rule.when, self.space, state):
                if self.space.variables[name].fact.screen:
                    waiting.setdefault(name, []).append(rule.id)
        return waiting


def _together(rules: list[tuple[Rule, Test]], space: Space) -> Conditions:
    return Conditions([(rule.when, test) for rule, test in rules], space)


def asked(space: Space, name: str, rules: list[str]) -> Asked:
    """The question a therapist asks for a fact, and the rules that wait for it."""
    fact = space.variables[name].fact
    return Asked(name, fact.question or f"{fact.label}?", tuple(dict.fromkeys(rules)))


def fired_rule(rule: Rule, truth: Truth, effect: str = "", change: str | None = None) -> Fired:
    """A rule as it bears on an answer."""
    return Fired(
        id=rule.id,
        title=rule.title,
        truth="fires" if truth is TRUE else "open",
        effect=effect or (rule.session.urgency if rule.session else ""),
        why=rule.why,
        strength=rule.strength,
        source=rule.source,
        contested=rule.contested,
        reviewed=rule.reviewed is not None,
        change=change,
    )


def _is_consent(rule: Rule, space: Space) -> bool:
    return any(space.variables[atom.name].fact.group == "consent" for atom in atoms(rule.when))


def _urgencies(sure: list[Rule], maybe: list[Rule]) -> tuple[Urgency | None, set[str]]:
    """How soon it surely is, and every urgency it may have."""
    urgency = _highest(sure)
    least = URGENCIES.index(urgency) if urgency else -1
    ranks = {URGENCIES.index(rule.session.urgency) for rule in maybe if rule.session}
    return urgency, {urgency or "none", *(URGENCIES[rank] for rank in ranks if rank > least)}


def _answer(sure: Sized, ask: Sized) -> str:
    return "refer" if sure else "ask_first" if ask else "go_on"


def _by_urgency(rules: list[Rule]) -> list[tuple[SessionEffect, Rule]]:
    effects = [(rule.session, rule) for rule in rules if rule.session]
    return sorted(effects, key=lambda one: (-URGENCIES.index(one[0].urgency), one[1].id))


def _highest(rules: list[Rule]) -> Urgency | None:
    ranks = [URGENCIES.index(rule.session.urgency) for rule in rules if rule.session]
    return URGENCIES[max(ranks)] if ranks else None


def _first_action(rules: list[Rule]) -> FirstAction | None:
    """What to do at once, by the most urgent rules alone: a milder one would mislead."""
    highest = _highest(rules)
    said = (one.first_action for one, _ in _by_urgency(rules) if one.urgency == highest)
    return next((action for action in said if action), None)
