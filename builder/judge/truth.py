"""Conditions over sets of possible values: surely true, surely false, or open."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from enum import IntEnum

from builder.judge.space import RECORDED, Space
from builder.model.condition import AllOf, AnyOf, Node, Not, Recorded, atoms


class Truth(IntEnum):
    """False, open for want of a record, or true; in this order `min` is and, `max` is or."""

    FALSE = 0
    OPEN = 1
    TRUE = 2


Test = Callable[[list[int]], Truth]
TURNED = (Truth.TRUE, Truth.OPEN, Truth.FALSE)


def compiled(node: Node, space: Space) -> Test:
    """A function from a state to the truth of the condition in it."""
    if isinstance(node, AllOf):
        return _joined([compiled(one, space) for one in node.parts], Truth.FALSE, Truth.TRUE)
    if isinstance(node, AnyOf):
        return _joined([compiled(one, space) for one in node.parts], Truth.TRUE, Truth.FALSE)
    if isinstance(node, Not):
        part = compiled(node.part, space)
        return lambda state: TURNED[part(state)]
    if isinstance(node, Recorded):
        return _atom(space.index[RECORDED + node.name], 0b10)
    return _atom(space.index[node.name], space.mask(node))


def _joined(parts: Sequence[Test], settles: Truth, otherwise: Truth) -> Test:
    """All or any of the parts: one that `settles` it is enough, else an open one leaves it open."""
    if len(parts) == 1:
        return parts[0]

    def test(state: list[int]) -> Truth:
        out = otherwise
        for part in parts:
            if (truth := part(state)) is settles:
                return settles
            if truth is Truth.OPEN:
                out = truth
        return out

    return test


def _atom(index: int, mask: int) -> Test:
    false, unsure, true = Truth.FALSE, Truth.OPEN, Truth.TRUE

    def test(state: list[int]) -> Truth:
        possible = state[index]
        if not possible & mask:
            return false
        return unsure if possible & ~mask else true

    return test


def open_facts(node: Node, space: Space, state: list[int]) -> list[str]:
    """The variables of a condition that have more than one possible value, in order of mention."""
    names = dict.fromkeys(atom.name for atom in atoms(node) if not isinstance(atom, Recorded))
    return [name for name in names if state[space.index[name]].bit_count() > 1]
