"""Says on the terminal where every participant stands."""

from __future__ import annotations

from collections.abc import Iterator

from builder.model.outcome import Graded
from builder.model.records import Decision, Requirement


def lines(graded: Graded) -> list[str]:
    """Each participant's answer with its reasons, and what is new."""
    met = sum(decision.met for decision in graded.decisions)
    new = len(graded.written)
    head = f"Class {graded.klass}: {met} of {len(graded.decisions)} met everything; {new} decisions new."
    people = [line for decision in graded.decisions for line in _person(graded, decision)]
    turned = [f"  turned {_who(graded, code)}: the decision before said otherwise." for code in graded.turned]
    return [head, *people, *turned]


def _person(graded: Graded, decision: Decision) -> Iterator[str]:
    state = "met" if decision.met else "open" if decision.open else "not met"
    yield f"  {state:<7}  {_who(graded, decision.code)}"
    yield from (_requirement(one) for one in decision.requirements)


def _requirement(one: Requirement) -> str:
    state = "yes" if one.met else "open" if one.open else "no"
    return f"    {state:<4} {one.kind.replace('_', ' ')} {one.name}: {one.reason}"


def _who(graded: Graded, code: str) -> str:
    return f"{graded.names.get(code, '')} ({code})"
