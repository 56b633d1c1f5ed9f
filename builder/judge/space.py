"""The decision space: every variable cut into cells, so that a set of possible values is one bit mask.

A word is a cell of its own. A number is cut at every bound that any condition names, into points and the
gaps between them; within a cell no condition can tell two numbers apart.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Container, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from functools import cached_property
from itertools import pairwise
from types import MappingProxyType

from builder.model.condition import Among, Node, Recorded, Within, atoms
from builder.model.fact import Fact
from builder.model.words import said

Value = str | Decimal
Spots = tuple[tuple[int, int], ...]
Ready = tuple[Spots, bool]
RECORDED = "recorded:"
FAR = Decimal(10) ** 9


@dataclass(frozen=True)
class Cell:
    """A word, or a stretch of numbers known by one of them; `least` and `most` bound a gap."""

    value: Value
    least: Decimal | None = None
    most: Decimal | None = None


@dataclass(frozen=True)
class Variable:
    """One variable of the space; bit i of a mask stands for `cells[i]`."""

    name: str
    fact: Fact
    cells: tuple[Cell, ...]
    place: dict[Value, int] = field(default_factory=dict)

    @cached_property
    def everything(self) -> int:
        """The mask of all its cells."""
        return (1 << len(self.cells)) - 1

    def mask_of(self, value: Value) -> int:
        """The mask of the one cell that holds a value; 0 when it is none of its values."""
        if (index := self.place.get(value)) is not None:
            return 1 << index
        if isinstance(value, str) or self.fact.kind != "number":
            return 0
        for index, cell in enumerate(self.cells):
            if cell.least is not None and cell.most is not None and cell.least < value < cell.most:
                return 1 << index
        return 0

    @property
    def safest(self) -> int:
        """The mask of its safest cell; all of them where neither end is safer."""
        if self.fact.worse_when in ("both", "neither"):
            return self.everything
        return 1 << (len(self.cells) - 1 if self.fact.worse_when in ("no", "lower") else 0)

    def values_in(self, mask: int) -> list[Value]:
        """The cells' values in a mask, in order."""
        return [cell.value for index, cell in enumerate(self.cells) if mask >> index & 1]


class Space:
    """All variables of one rule set, and the masks of its conditions."""

    def __init__(
        self,
        facts: dict[str, Fact],
        conditions: Iterable[Node],
        cuts: Iterable[tuple[str, Decimal]],
        words: Mapping[str, str] = MappingProxyType({}),
    ) -> None:
        """Cut every variable at the bounds the conditions name, and at the further `cuts`.

        `words` are those of the interface, for whoever tells of the space.
        """
        self.words = words
        found, recorded = _bounds(conditions, cuts)
        self.variables: dict[str, Variable] = {
            name: _variable(name, fact, sorted(found[name])) for name, fact in facts.items()
        }
        for name in recorded:
            flag = Fact(kind="yes_no", label=name, group="history", worse_when="neither")
            self.variables[RECORDED + name] = _variable(RECORDED + name, flag, [])
        self.index = {name: position for position, name in enumerate(self.variables)}
        self.excluded = {
            name: tuple(self._excluded_by(one.fact))
            for name, one in self.variables.items()
            if one.fact.excludes
        }
        self._unknown = tuple(_unknown(name, one) for name, one in self.variables.items())
        self._masks: dict[Among | Within, int] = {}
        self._spots: dict[tuple[str, Value], Spots] = {}

    def say(self, key: str, **blanks: object) -> str:
        """The words with the id `j_<key>`, their blanks filled."""
        return said(self.words, f"j_{key}", **blanks)

    def mask(self, atom: Among | Within) -> int:
        """The mask of the cells in which an atom holds."""
        if atom not in self._masks:
            variable = self.variables[atom.name]
            held = (holds(atom, cell.value, variable.fact) for cell in variable.cells)
            self._masks[atom] = sum(1 << index for index, here in enumerate(held) if here)
        return self._masks[atom]

    def unknown(self) -> list[int]:
        """The state in which nothing is recorded, one mask a variable."""
        return list(self._unknown)

    def state(self, values: Mapping[str, Value]) -> list[int]:
        """The state in which these values are recorded; a value outside its fact is taken as not recorded."""
        return self.state_without(self.recorded(values), ())

    def recorded(self, values: Mapping[str, Value]) -> dict[str, Ready]:
        """Values made ready to be set: for each name its masks, and whether it excludes other things."""
        return {
            name: (self.spots(name, value), value == "yes" and name in self.excluded)
            for name, value in values.items()
        }

    def state_without(self, recorded: Mapping[str, Ready], names: Container[str]) -> list[int]:
        """The state in which all of this is recorded but what these names say."""
        state, excluding = self.unknown(), []
        for name, (spots, excludes) in recorded.items():
            if name not in names:
                for index, mask in spots:
                    state[index] = mask
                if excludes:
                    excluding.append(name)
        for name in excluding:
            self._exclude(state, name)
        return state

    def record(self, state: list[int], name: str, value: Value) -> None:
        """Set one value in a state, with what it excludes where that is not recorded itself."""
        spots = self.spots(name, value)
        for index, mask in spots:
            state[index] = mask
        if spots and value == "yes" and name in self.excluded:
            self._exclude(state, name)

    def _exclude(self, state: list[int], name: str) -> None:
        for index, everything, no in self.excluded[name]:
            if state[index] == everything:
                state[index] = no

    def spots(self, name: str, value: Value) -> Spots:
        """Which masks of a state say that a value is recorded, by position; none for no value of its fact."""
        spots = self._spots.get((name, value))
        if spots is None:
            spots = self._spots[name, value] = tuple(self._found(name, value))
        return spots

    def _found(self, name: str, value: Value) -> Iterator[tuple[int, int]]:
        if name in self.index and (mask := self.variables[name].mask_of(value)):
            yield self.index[name], mask
            if (flag := self.index.get(RECORDED + name)) is not None:
                yield flag, 0b10

    def _excluded_by(self, fact: Fact) -> Iterator[tuple[int, int, int]]:
        for other in fact.excludes:
            variable = self.variables[other]
            yield self.index[other], variable.everything, variable.mask_of("no")


def _unknown(name: str, variable: Variable) -> int:
    return 1 if name.startswith(RECORDED) else variable.everything


def holds(atom: Among | Within, value: Value, fact: Fact) -> bool:
    """Whether an atom holds for one value of a fact."""
    if isinstance(atom, Among):
        return value in atom.values
    return all(_bound_holds(bound, limit, value, fact) for bound, limit in atom.bounds)


def _bound_holds(bound: str, limit: Value, value: Value, fact: Fact) -> bool:
    if fact.kind == "number":
        left, right = Decimal(value), Decimal(limit)
    else:
        order = fact.words_of_values
        left, right = Decimal(order.index(str(value))), Decimal(order.index(str(limit)))
    return {"over": left > right, "at_least": left >= right, "below": left < right, "at_most": left <= right}[
        bound
    ]


def _numbers(atom: Among | Within) -> list[Decimal]:
    values = atom.values if isinstance(atom, Among) else tuple(limit for _, limit in atom.bounds)
    return [one for one in values if isinstance(one, Decimal)]


def _variable(name: str, fact: Fact, cuts: list[Decimal]) -> Variable:
    if fact.kind != "number":
        cells = tuple(Cell(word) for word in fact.words_of_values)
        return Variable(name, fact, cells, {cell.value: index for index, cell in enumerate(cells)})
    low = fact.low if fact.low is not None else -FAR
    high = fact.high if fact.high is not None else FAR
    points = sorted({low, high, *(cut for cut in cuts if low < cut < high)})
    cells = ()
    for left, right in pairwise(points):
        cells += (Cell(left), Cell((left + right) / 2, left, right))
    cells += (Cell(points[-1]),)
    return Variable(name, fact, cells, {cell.value: i for i, cell in enumerate(cells) if cell.least is None})


def _bounds(
    conditions: Iterable[Node], cuts: Iterable[tuple[str, Decimal]]
) -> tuple[defaultdict[str, set[Decimal]], set[str]]:
    """Where each variable is cut, and of which facts it is asked whether they were recorded."""
    found: defaultdict[str, set[Decimal]] = defaultdict(set)
    recorded: set[str] = set()
    for name, value in cuts:
        found[name].add(value)
    for condition in conditions:
        for atom in atoms(condition):
            if isinstance(atom, Recorded):
                recorded.add(atom.name)
            else:
                found[atom.name].update(_numbers(atom))
    return found, recorded
