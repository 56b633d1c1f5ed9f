"""Proof that no two demands on what is written contradict each other where a card is otherwise open."""

from __future__ import annotations

from collections.abc import Iterator

from builder.judge.reach import CHANGE, Push, Reach
from builder.judge.witness import WRITTEN, witness
from builder.model.condition import Among, Within, atoms
from builder.model.judgement import Hole


def contradictions(reach: Reach) -> Iterator[Hole]:
    """Cards open to some client that can not be written so that they are right, with that client."""
    for (card, site), pushes in reach.pushes.items():
        free = [-one.literal for one in pushes if one.rank > CHANGE]
        for name, demands in _by_attribute(pushes).items():
            assumed = [*reach.proof.recorded, *free, *_unmeetable(reach, name, demands)]
            if reach.proof.solver.can_be(assumed):
                yield Hole("contradiction", f"{card}, {site}: {name}", witness(reach.proof, assumed))


def _by_attribute(pushes: list[Push]) -> dict[str, list[Push]]:
    found: dict[str, list[Push]] = {}
    for one in pushes:
        for atom in atoms(one.demand) if one.demand else ():
            found.setdefault(atom.name.removeprefix(WRITTEN), []).append(one)
    return found


def _unmeetable(reach: Reach, name: str, demands: list[Push]) -> list[int]:
    """For every value of an attribute, that some demand that bears refuses it."""
    cells = reach.proof.space.variables[WRITTEN + name].cells
    return [
        reach.proof.any_of([one.bears for one in demands if not _allows(reach, one, index)])
        for index in range(len(cells))
    ]


def _allows(reach: Reach, push: Push, index: int) -> bool:
    node = push.demand
    return not isinstance(node, Among | Within) or bool(reach.proof.space.mask(node) >> index & 1)
