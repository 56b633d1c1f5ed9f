"""What would change an answer: the smallest change among things that change in the room, found exactly.

Sets of variables are tried by size. Left open, a set bounds what any change of it could give; a set that
gives nothing new is grown as far as that still holds, and every change must then touch what lies outside.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import combinations

from builder.judge.space import FAR, Cell, Space
from builder.judge.trial import Trial
from builder.judge.words import between, told
from builder.model.card import ANSWERS
from builder.model.fact import Fact
from builder.model.judgement import OptionJudgement, WouldChange

MOST = 4
Names = tuple[str, ...]
Flip = tuple[tuple[Cell, ...], int]


@dataclass(frozen=True)
class Search:
    """The search for one option: in what order each variable's other cells are tried, the nearest first."""

    trial: Trial
    judged: OptionJudgement
    room: dict[str, tuple[Cell, ...]]
    outside: list[frozenset[str]] = field(default_factory=list)

    @property
    def now(self) -> int:
        """The answer at worst as things are."""
        return ANSWERS.index(self.judged.at_worst)

    def others(self, fixed: dict[str, Cell], left: tuple[str, ...]) -> set[int]:
        """Other answers that some change of `left` might give where `fixed` has changed; none is missed."""
        least, most = self.trial.bounds(self.judged, fixed, frozenset(left))
        return set(range(least, most + 1)) - {self.now}

    def flips(self, names: Names) -> Iterator[Flip]:
        """For each other answer that changing all of `names` can give, the nearest cells that give it."""
        if not self.is_ruled_out(names):
            yield from self._below({}, names, set())

    def _below(self, fixed: dict[str, Cell], left: Names, known: set[int]) -> Iterator[Flip]:
        """The flips with `fixed` and a change of `left`, which may give some."""
        name, rest = left[0], left[1:]
        for cell in self.room[name]:
            changed = {**fixed, name: cell}
            others = self.others(changed, rest) - known
            if others and rest:
                yield from self._below(changed, rest, known)
            elif others:
                known |= others
                yield from ((tuple(changed.values()), answer) for answer in others)

    def is_ruled_out(self, names: Names) -> bool:
        """Whether no change of these gives another answer, as far as that is seen without trying them."""
        if any(one.isdisjoint(names) for one in self.outside):
            return True
        if self.others({}, names):
            return False
        self.outside.append(self._outside(names))
        return True

    def _outside(self, names: Names) -> frozenset[str]:
        idle = list(names)
        for name in self.room:
            if name not in names and not self.others({}, (*idle, name)):
                idle.append(name)
        return frozenset(self.room) - set(idle)


def would_change(trial: Trial, judged: OptionJudgement) -> tuple[tuple[WouldChange, ...], bool]:
    """The smallest changes that give another answer at worst, at most four; and whether there are more.

    Only what can change in the room is changed: signs, time, preparation, dose, site; never a flag, a drug,
    an age or consent. Of a set of things that is told for an answer, the nearest values are told.
    """
    search = Search(trial, judged, trial.room(judged))
    names = tuple(search.room)
    if not search.others({}, names):
        return (), False
    for size in range(1, len(names) + 1):
        found = list(_told(search, size))
        if found:
            return tuple(found[:MOST]), len(found) > MOST
    return (), False


def _told(search: Search, size: int) -> Iterator[WouldChange]:
    count = 0
    for names in combinations(search.room, size):
        for cells, answer in search.flips(names):
            changed = dict(zip(names, cells, strict=True))
            values = {name: cell.value for name, cell in changed.items()}
            yield WouldChange(values, ANSWERS[answer], _words(search.trial, changed))
            count += 1
            if count > MOST:
                return


def _words(trial: Trial, changed: dict[str, Cell]) -> str:
    space = trial.space
    told_each = [_change_words(space, space.variables[name].fact, cell) for name, cell in changed.items()]
    return space.say("and").join(told_each)


def _change_words(space: Space, fact: Fact, cell: Cell) -> str:
    if cell.least is None or cell.most is None:
        return told(fact, cell.value)
    top = fact.high if fact.high is not None else FAR
    if cell.most == top:
        return f"{fact.in_sentence} {space.say('over', value=fact.in_words(cell.least))}"
    low, high = between(fact, cell.least, cell.most)
    return space.say("between", of=fact.in_sentence, low=low, high=high)
