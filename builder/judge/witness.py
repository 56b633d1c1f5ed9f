"""The client that shows a fault: as few facts as can be away from their safest, in words."""

from __future__ import annotations

from builder.judge.encode import Encoding
from builder.judge.space import RECORDED, Variable

WRITTEN = "written."
MOST_COUNTED = 8


def witness(proof: Encoding, assumed: list[int]) -> str:
    """What must be remarkable of a client for all that is assumed to be true.

    Of all such clients one with the fewest remarkable facts, up to eight; beyond that merely none that need
    not be.
    """
    names = [name for name in proof.space.variables if not name.startswith((RECORDED, WRITTEN))]
    held, told = [*assumed, *_fewest(proof, names, assumed)], []
    seen = proof.solver.model(held)
    for name in names:
        variable = proof.space.variables[name]
        for cell in _safest_first(variable):
            literal = proof.cells[name][cell]
            found = seen if seen and literal in seen else proof.solver.model([*held, literal])
            if found is not None:
                seen = found
                held.append(literal)
                if cell != _safest_first(variable)[0]:
                    words = variable.fact.in_words(variable.cells[cell].value)
                    told.append(f"{variable.fact.label.lower()}: {words}")
                break
    return "; ".join(told) or "any client"


def _fewest(proof: Encoding, names: list[str], assumed: list[int]) -> list[int]:
    """What is to be assumed besides, so that no client with fewer remarkable facts is left."""
    if not proof.beyond:  # one counter serves every fault of a proof
        remarkable = [-proof.cells[name][_safest_first(proof.space.variables[name])[0]] for name in names]
        proof.beyond = proof.solver.counted(remarkable, MOST_COUNTED)
    return next(([-more] for more in proof.beyond if proof.solver.can_be([*assumed, -more])), [])


def _safest_first(variable: Variable) -> list[int]:
    cells = list(range(len(variable.cells)))
    return cells[::-1] if variable.fact.worse_when in ("lower", "no") else cells
