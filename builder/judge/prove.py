"""Proofs over every client: no dead end, no warning without effect, nothing idle, no contradiction.

What an option leaves to be written (dose, preparation) is taken as well written, so rules that test what is
written are left to the judge. Each fault comes with a witness in which only what must be remarkable is.
"""

from __future__ import annotations

from collections.abc import Iterator

from builder.doors.solver import Solver
from builder.judge.bands import table_holes
from builder.judge.clash import contradictions
from builder.judge.encode import Encoding, sites_of
from builder.judge.idle import idle_facts, idle_rules
from builder.judge.reach import Reach
from builder.judge.space import Space, Value
from builder.judge.witness import witness
from builder.model.card import SITES, Aim, Card
from builder.model.judgement import Hole
from builder.model.library import Content

STOPPING = ("emergency", "same_day")


def holes(content: Content, space: Space) -> list[Hole]:
    """Every hole found in the rule set."""
    with Solver() as solver:
        proof = Encoding(content, space, solver)
        reach = Reach(proof)
        found = [*_never_fired(proof), *_open_flags(proof), *_open_without_consent(proof), *_dead_ends(proof)]
        found += [*contradictions(reach), *idle_rules(proof, reach)]
    return [*found, *idle_facts(content, space), *table_holes(content, space)]


def open_client(
    content: Content, space: Space, given: dict[str, Value], card: str, sites: tuple[str, ...] = SITES
) -> str | None:
    """A client with these facts for whom no cell and no rule answers against a card somewhere, in words."""
    with Solver() as solver:
        proof = Encoding(content, space, solver)
        here = proof.is_open(content.cards[card], *sites)
        known = [proof.cells[name][_cell(space, name, value)] for name, value in given.items()]
        assumed = [*proof.recorded, *known, here]
        return witness(proof, assumed) if solver.can_be(assumed) else None


def _cell(space: Space, name: str, value: Value) -> int:
    return space.variables[name].mask_of(value).bit_length() - 1


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
    return not proof.solver.can_be(_left_open(proof, rule, card))


def _left_open(proof: Encoding, rule: str, card: Card) -> list[int]:
    return [*proof.recorded, proof.fires[rule], _open_anywhere(proof, card)]


def _open_anywhere(proof: Encoding, card: Card) -> int:
    return proof.is_open(card, *sites_of(card))


def _never_fired(proof: Encoding) -> Iterator[Hole]:
    for rule, fires in proof.fires.items():
        if not proof.solver.can_be([fires]):
            yield Hole("never_fires", rule, "No client that can be recorded meets its condition.")


def _open_flags(proof: Encoding) -> Iterator[Hole]:
    hands_on = [card for card in proof.content.cards.values() if card.hands_on]
    for rule in proof.content.rules.values():
        if rule.session and rule.session.urgency in STOPPING:
            for card in hands_on:
                assumed = _left_open(proof, rule.id, card)
                if proof.solver.can_be(assumed):
                    yield Hole("flag_leaves_open", f"{rule.id}: {card.id}", witness(proof, assumed))


def _open_without_consent(proof: Encoding) -> Iterator[Hole]:
    for card in (one for one in proof.content.cards.values() if one.hands_on):
        assumed = [*proof.recorded, proof.word("consent", "no"), _open_anywhere(proof, card)]
        if proof.solver.can_be(assumed):
            yield Hole("consent_leaves_open", card.id, witness(proof, assumed))


def _dead_ends(proof: Encoding) -> Iterator[Hole]:
    consent = proof.word("consent", "yes")
    for aim, situation in _situations(proof):
        serving = [card for card in proof.content.cards.values() if aim in card.serves]
        assumed = [*proof.recorded, consent, situation, *(-_open_anywhere(proof, card) for card in serving)]
        if proof.solver.can_be(assumed):
            yield Hole("dead_end", aim, witness(proof, assumed))


def _situations(proof: Encoding) -> Iterator[tuple[Aim, int]]:
    going_on = proof.word("session_urgency", "none")
    yield "refer", -going_on
    yield "ask", going_on
    for phase, aim in proof.content.phases.aims.items():
        yield aim, -proof.any_of([-going_on, -proof.word("phase", phase)])
