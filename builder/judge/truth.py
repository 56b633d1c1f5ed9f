"""Conditions over sets of possible values: surely true, surely false, or open."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from enum import IntEnum
from itertools import compress, count
from operator import ne
from typing import Final

from builder.judge.space import RECORDED, Space
from builder.model.condition import AllOf, Among, AnyOf, Node, Not, Recorded, Within, atoms


class Truth(IntEnum):
    """False, open for want of a record, or true; in this order `min` is and, `max` is or."""

    FALSE = 0
    OPEN = 1
    TRUE = 2


FALSE: Final = Truth.FALSE  # under these names they are at hand seven times as soon as through their class
OPEN: Final = Truth.OPEN
TRUE: Final = Truth.TRUE
Test = Callable[[list[int]], Truth]
TURNED = (TRUE, OPEN, FALSE)


def compiled(node: Node, space: Space) -> Test:
    """A function from a state to the truth of the condition in it."""
    if isinstance(node, AllOf):
        return _joined([compiled(one, space) for one in node.parts], FALSE, TRUE)
    if isinstance(node, AnyOf):
        return _joined([compiled(one, space) for one in node.parts], TRUE, FALSE)
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
            if truth is OPEN:
                out = truth
        return out

    return test


def _atom(index: int, mask: int) -> Test:
    def test(state: list[int]) -> Truth:
        possible = state[index]
        if not possible & mask:
            return FALSE
        return OPEN if possible & ~mask else TRUE

    return test


@dataclass(frozen=True)
class Known:
    """What some conditions were found to be in one state."""

    state: list[int]
    truths: list[Truth]


class Conditions:
    """Conditions asked together of one state after another; of one like a known one only what differs."""

    def __init__(self, asked: Iterable[tuple[Node, Test]], space: Space) -> None:
        self._tests: list[Test] = []
        self._readers: dict[int, list[int]] = {}
        for place, (node, test) in enumerate(asked):
            self._tests.append(test)
            for index in {_index(atom, space) for atom in atoms(node)}:
                self._readers.setdefault(index, []).append(place)

    def known(self, state: list[int], near: Known | None = None) -> Known:
        """The truth of each in a state that is not changed any more, in order."""
        if near is None:
            return Known(state, [test(state) for test in self._tests])
        changed = compress(count(), map(ne, state, near.state))
        truths = list(near.truths)
        for place in {reader for at in changed for reader in self._readers.get(at, ())}:
            truths[place] = self._tests[place](state)
        return Known(state, truths)


def _index(atom: Among | Recorded | Within, space: Space) -> int:
    return space.index[RECORDED + atom.name if isinstance(atom, Recorded) else atom.name]


def open_facts(node: Node, space: Space, state: list[int]) -> list[str]:
    """The variables of a condition that have more than one possible value, in order of mention."""
    names = dict.fromkeys(atom.name for atom in atoms(node) if not isinstance(atom, Recorded))
    return [name for name in names if state[space.index[name]].bit_count() > 1]
