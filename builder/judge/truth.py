"""Conditions over sets of possible values: surely true, surely false, or open."""

from __future__ import annotations

from collections.abc import Callable
from enum import IntEnum

from builder.judge.space import RECORDED, Space
from builder.model.condition import AllOf, AnyOf, Node, Not, Recorded, atoms


class Truth(IntEnum):
    """False, open for want of a record, or true; in this order `min` is and, `max` is or."""

    FALSE = 0
    OPEN = 1
    TRUE = 2


Test = Callable[[list[int]], Truth]


def compiled(node: Node, space: Space) -> Test:
    """A function from a state to the truth of the condition in it."""
    if isinstance(node, AllOf):
        parts = [compiled(one, space) for one in node.parts]
        return lambda state: min((part(state) for part in parts), default=Truth.TRUE)
    if isinstance(node, AnyOf):
        parts = [compiled(one, space) for one in node.parts]
        return lambda state: max((part(state) for part in parts), default=Truth.FALSE)
    if isinstance(node, Not):
        part = compiled(node.part, space)
        return lambda state: Truth(2 - part(state))
    if isinstance(node, Recorded):
        return _atom(space.index[RECORDED + node.name], 0b10)
    return _atom(space.index[node.name], space.mask(node))


def _atom(index: int, mask: int) -> Test:
    def test(state: list[int]) -> Truth:
        possible = state[index]
        if not possible & mask:
            return Truth.FALSE
        return Truth.OPEN if possible & ~mask else Truth.TRUE

    return test


def open_facts(node: Node, space: Space, state: list[int]) -> list[str]:
    """The variables of a condition that have more than one possible value, in order of mention."""
    names = dict.fromkeys(atom.name for atom in atoms(node) if not isinstance(atom, Recorded))
    return [name for name in names if state[space.index[name]].bit_count() > 1]
