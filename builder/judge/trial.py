"""One visit to try changes on: the frame of any other state of the room, and bounds where it is left open."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import cached_property

from builder.judge.frame import Frame
from builder.judge.option import OptionJudge
from builder.judge.space import Cell, Ready, Space, Value
from builder.model.card import SITES, site_of
from builder.model.judgement import OptionJudgement

WRITTEN = "written."
SITE = f"{WRITTEN}site"
DERIVED = frozenset({"phase", "severity", "signs_behind", "session_urgency"})
Masks = tuple[tuple[str, int], ...]


@dataclass(frozen=True)
class Trial:
    """A visit's recorded values, and a maker of the frame of any other state of its room.

    The maker is told the state and which variables it leaves open that are recorded. `derived_from`: what
    severity, phase and session are worked out from.
    """

    options: OptionJudge
    values: Mapping[str, Value]
    frame_of: Callable[[list[int], frozenset[str]], Frame]
    derived_from: frozenset[str]
    frames: dict[Masks, Frame] = field(default_factory=dict)

    @cached_property
    def recorded(self) -> dict[str, Ready]:
        """What the visit has recorded, made ready."""
        return self.space.recorded(self.values)

    @property
    def space(self) -> Space:
        """The decision space the visit lies in."""
        return self.options.space

    def room(self, judged: OptionJudgement) -> dict[str, tuple[Cell, ...]]:
        """What is recorded or written, can change in the room and bears on the card; nearest cells first."""
        bearing = self.derived_from | self.options.names[judged.card] | {SITE}
        found: dict[str, tuple[Cell, ...]] = {}
        for name, variable in self.space.variables.items():
            mask = self._mask(judged, name) if variable.fact.room and name in bearing else 0
            if mask:
                here, cells = mask.bit_length() - 1, variable.cells
                near = sorted((abs(place - here), place) for place in range(len(cells)) if place != here)
                found[name] = tuple(cells[place] for _, place in near)
        return found

    def cell(self, judged: OptionJudgement, name: str) -> Cell:
        """The cell in which a variable of the room lies now."""
        return self.space.variables[name].cells[self._mask(judged, name).bit_length() - 1]

    def _mask(self, judged: OptionJudgement, name: str) -> int:
        written = name.startswith(WRITTEN)
        where = {**judged.written, "site": judged.site} if written else self.values
        value = where.get(name.removeprefix(WRITTEN))
        return self.space.variables[name].mask_of(value) if value is not None else 0

    def bounds(
        self, judged: OptionJudgement, fixed: Mapping[str, Cell], left: frozenset[str]
    ) -> tuple[int, int]:
        """The least and the greatest rank the answer at worst can have, whatever the values of `left`.

        Where nothing is left the two are one, and are the answer.
        """
        masks = {name: self.space.variables[name].mask_of(cell.value) for name, cell in fixed.items()}
        masks |= {name: self.space.variables[name].everything for name in left}
        facts = tuple((name, mask) for name, mask in masks.items() if not name.startswith(WRITTEN))
        frame = self._frame(tuple(sorted(facts)), left)
        state = list(self.options.with_written(frame, site_of(judged.site), judged.written))
        for name, mask in masks.items():
            if name.startswith(WRITTEN):
                state[self.space.index[name]] = mask
        card = self.options.cards[judged.card]
        sites = SITES if SITE in left else (site_of(fixed[SITE].value if SITE in fixed else judged.site),)
        moving = left | DERIVED if left & self.derived_from else left
        ranks = [self.options.ranks(frame, card, site, state, moving) for site in sites]
        greatest = max(worst for _, worst in ranks)
        return (min(sure for sure, _ in ranks) if left else greatest), greatest

    def _frame(self, facts: Masks, left: frozenset[str]) -> Frame:
        """The frame with these facts at these masks; each is worked out once for all options."""
        if facts not in self.frames:
            changed = {name for name, _ in facts}
            state = self.space.state_without(self.recorded, changed)
            for name, mask in facts:
                self._set(state, name, mask)
            opened = frozenset(name for name, _ in facts if name in left)
            self.frames[facts] = self.frame_of(state, opened)
        return self.frames[facts]

    def _set(self, state: list[int], name: str, mask: int) -> None:
        variable = self.space.variables[name]
        if mask == variable.everything:
            # What is left open stays recorded; what it may exclude is open too.
            self.space.record(state, name, variable.cells[0].value)
            state[self.space.index[name]] = mask
        else:
            self.space.record(state, name, variable.values_in(mask)[0])
