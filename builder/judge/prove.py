"""Proofs over every client: no dead end, no flag that leaves hands-on work open, no idle rule.

What an option leaves to be written (dose, preparation) is taken as well written, so rules that test what is
written are left to the judge. Each fault comes with a witness in which only what must be remarkable is.
"""

from __future__ import annotations

from collections.abc import Iterator

from builder.doors.solver import Solver
from builder.judge.encode import Encoding, sites_of
from builder.judge.space import RECORDED, Space, Variable
from builder.model.card import Aim, Card
from builder.model.judgement import Hole
from builder.model.library import Content

STOPPING = ("emergency", "same_day")


def holes(content: Content, space: Space) -> list[Hole]:
    """Every hole found in the rule set."""
    with Solver() as solver:
        proof = Encoding(content, space, solver)
        return [*_idle_rules(proof), *_open_flags(proof), *_dead_ends(proof)]


def flag_table(content: Content, space: Space) -> dict[str, dict[str, bool]]:
    """For each rule that stops the session and each hands-on card: whether it is stopped everywhere."""
    with Solver() as solver:
        proof = Encoding(content, space, solver)
        return {
            rule.id: {
                card.id: _stopped(proof, rule.id, card) for card in content.cards.values() if card.hands_on
            }
            for rule in content.rules.values()
            if rule.session and rule.session.urgency in STOPPING
        }


def _stopped(proof: Encoding, rule: str, card: Card) -> bool:
    return proof.solver.model(_left_open(proof, rule, card)) is None


def _left_open(proof: Encoding, rule: str, card: Card) -> list[int]:
    return [*proof.recorded, proof.fires[rule], _open_anywhere(proof, card)]


def _open_anywhere(proof: Encoding, card: Card) -> int:
    return proof.any_of([proof.is_open(card, site) for site in sites_of(card)])


def _idle_rules(proof: Encoding) -> Iterator[Hole]:
    for rule, fires in proof.fires.items():
        if proof.solver.model([fires]) is None:
            yield Hole("never_fires", rule, "No client that can be recorded meets its condition.")


def _open_flags(proof: Encoding) -> Iterator[Hole]:
    hands_on = [card for card in proof.content.cards.values() if card.hands_on]
    for rule in proof.content.rules.values():
        if rule.session and rule.session.urgency in STOPPING:
            for card in hands_on:
                assumed = _left_open(proof, rule.id, card)
                if proof.solver.model(assumed) is not None:
                    yield Hole("flag_leaves_open", f"{rule.id}: {card.id}", _witness(proof, assumed))


def _dead_ends(proof: Encoding) -> Iterator[Hole]:
    consent = proof.word("consent", "yes")
    for aim, situation in _situations(proof):
        serving = [card for card in proof.content.cards.values() if aim in card.serves]
        assumed = [*proof.recorded, consent, situation, *(-_open_anywhere(proof, card) for card in serving)]
        if proof.solver.model(assumed) is not None:
            yield Hole("dead_end", aim, _witness(proof, assumed))


def _situations(proof: Encoding) -> Iterator[tuple[Aim, int]]:
    going_on = proof.word("session_urgency", "none")
    yield "refer", -going_on
    yield "ask", going_on
    for phase, aim in proof.content.phases.aims.items():
        yield aim, -proof.any_of([-going_on, -proof.word("phase", phase)])


def _witness(proof: Encoding, assumed: list[int]) -> str:
    """The client that shows a fault, every fact at its safest as far as the fault allows, in words."""
    held, told = list(assumed), []
    for name, variable in proof.space.variables.items():
        if name.startswith((RECORDED, "written.")):
            continue
        for cell in _safest_first(variable):
            literal = proof.cells[name][cell]
            if proof.solver.model([*held, literal]) is not None:
                held.append(literal)
                if cell != _safest_first(variable)[0]:
                    words = variable.fact.in_words(variable.cells[cell].value)
                    told.append(f"{variable.fact.label.lower()}: {words}")
                break
    return "; ".join(told) or "any client"


def _safest_first(variable: Variable) -> list[int]:
    cells = list(range(len(variable.cells)))
    return cells[::-1] if variable.fact.worse_when in ("lower", "no") else cells
