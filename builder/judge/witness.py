"""The client that shows a fault: every fact at its safest as far as the fault allows, in words."""

from __future__ import annotations

from builder.judge.encode import Encoding
from builder.judge.space import RECORDED, Variable

WRITTEN = "written."


def witness(proof: Encoding, assumed: list[int]) -> str:
    """What must be remarkable of a client for all that is assumed to be true; nothing that need not be."""
    held, told = list(assumed), []
    seen = proof.solver.model(held)
    for name, variable in proof.space.variables.items():
        if name.startswith((RECORDED, WRITTEN)):
            continue
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


def _safest_first(variable: Variable) -> list[int]:
    cells = list(range(len(variable.cells)))
    return cells[::-1] if variable.fact.worse_when in ("lower", "no") else cells
