"""What would change an answer: the smallest change among things that change in the room."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from itertools import combinations

from builder.judge.frame import Frame
from builder.judge.option import OptionJudge
from builder.judge.space import FAR, Cell, Space, Value
from builder.judge.words import between, told
from builder.model.card import SITES, Answer, site_of
from builder.model.fact import Fact
from builder.model.judgement import OptionJudgement, WouldChange

Change = tuple[str, Cell]
MOST = 4
WRITTEN = "written."
DERIVED = frozenset({"phase", "severity", "signs_behind", "session_urgency"})


@dataclass(frozen=True)
class Trial:
    """One visit to try changes on: its recorded values, and a maker of the frame of any other state."""

    options: OptionJudge
    values: Mapping[str, Value]
    state: list[int]
    frame_of: Callable[[list[int]], Frame]
    derived_from: frozenset[str]
    frames: dict[tuple[Change, ...], Frame] = field(default_factory=dict)

    @property
    def space(self) -> Space:
        """The decision space the visit lies in."""
        return self.options.space

    def frame(self, facts: tuple[Change, ...]) -> Frame:
        """The visit's frame with these facts changed; each is worked out once for all options."""
        if facts not in self.frames:
            state = list(self.state)
            for name, cell in facts:
                self.space.record(state, name, cell.value)
            self.frames[facts] = self.frame_of(state)
        return self.frames[facts]


def would_change(trial: Trial, judged: OptionJudgement) -> tuple[WouldChange, ...]:
    """The changes of one thing that give another answer at worst, or else of two; at most four, the nearest.

    Only what can change in the room is tried: signs, time, preparation, dose, site; never a flag, a drug,
    an age or consent. Every cell of every such variable that bears on the card is tried, so no smaller
    change is missed; of a variable the nearest cell is told for each answer.
    """
    room = list(_room(trial, judged))
    if not _can_change(trial, judged, {name for name, _ in room}):
        return ()
    for size in (1, 2):
        found: dict[tuple[str, ...], WouldChange] = {}
        for changes in combinations(room, size):
            names = tuple(name for name, _ in changes)
            if len(set(names)) < size or len(found) == MOST:
                continue
            answer = _answer(trial, judged, changes)
            if answer != judged.at_worst:
                told = {name: cell.value for name, cell in changes}
                found.setdefault((*names, answer), WouldChange(told, answer, _words(trial.space, changes)))
        if found:
            return tuple(found.values())
    return ()


def _can_change(trial: Trial, judged: OptionJudgement, room: set[str]) -> bool:
    """Whether any change in the room could give another answer: judged once with all of it left open."""
    if judged.at_worst == "barred" and trial.options.is_barred_by(trial.state, judged.card, DERIVED | room):
        return False
    state = list(trial.state)
    for name in room:
        if not name.startswith(WRITTEN):
            state[trial.space.index[name]] = trial.space.variables[name].everything
    frame, card = trial.frame_of(state), trial.options.cards[judged.card]
    written = {name: value for name, value in judged.written.items() if f"{WRITTEN}{name}" not in room}
    answers = {one for site in SITES for one in trial.options.answers(frame, card, site, written)}
    return answers != {judged.at_worst}


def _room(trial: Trial, judged: OptionJudgement) -> Iterator[Change]:
    written = {f"{WRITTEN}{name}": value for name, value in judged.written.items()}
    now = {**trial.values, **written, f"{WRITTEN}site": judged.site}
    bearing = trial.derived_from | trial.options.names[judged.card] | {f"{WRITTEN}site"}
    for name, variable in trial.space.variables.items():
        if not variable.fact.room or name not in now or name not in bearing:
            continue
        if not (mask := variable.mask_of(now[name])):
            continue
        here = mask.bit_length() - 1
        for _, index in sorted(
            (abs(index - here), index) for index in range(len(variable.cells)) if index != here
        ):
            yield name, variable.cells[index]


def _answer(trial: Trial, judged: OptionJudgement, changes: tuple[Change, ...]) -> Answer:
    facts = tuple(change for change in changes if not change[0].startswith(WRITTEN))
    written = {name.removeprefix(WRITTEN): cell.value for name, cell in changes if name.startswith(WRITTEN)}
    site = site_of(written.pop("site", judged.site))
    card = trial.options.cards[judged.card]
    return trial.options.answers(trial.frame(facts), card, site, {**judged.written, **written})[1]


def _words(space: Space, changes: tuple[Change, ...]) -> str:
    return " and ".join(_change_words(space.variables[name].fact, cell) for name, cell in changes)


def _change_words(fact: Fact, cell: Cell) -> str:
    if cell.least is None or cell.most is None:
        return told(fact, cell.value)
    top = fact.high if fact.high is not None else FAR
    if cell.most == top:
        return f"{fact.in_sentence} over {fact.in_words(cell.least)}"
    return f"{fact.in_sentence} between {between(fact, cell.least, cell.most).replace(' to ', ' and ')}"
