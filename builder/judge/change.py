"""What would change an answer: the smallest change among things that change in the room."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import combinations
from typing import TYPE_CHECKING

from builder.judge.space import FAR, Cell, Space, Value
from builder.judge.words import plain, value_words
from builder.model.card import Answer, site_of
from builder.model.fact import Fact
from builder.model.judgement import OptionJudgement, WouldChange
from builder.model.tables import Severity

if TYPE_CHECKING:
    from builder.judge.judge import Judge

Change = tuple[str, Cell]
Grades = tuple[Severity | None, Severity | None]
MOST = 4


def would_change(
    judge: Judge, values: Mapping[str, Value], grades: Grades, judged: OptionJudgement
) -> tuple[WouldChange, ...]:
    """The changes of one thing that give another answer at worst, or else of two; at most four, the nearest.

    Only what can change in the room is tried: signs, time, preparation, dose, site; never a flag, a drug,
    an age or consent. Every cell of every such variable is tried, so no smaller change is missed; of a
    variable the nearest cell is told for each answer. `grades` are the declared and the earlier severity.
    """
    room = list(_room(judge.space, values, judged))
    for size in (1, 2):
        found: dict[tuple[str, ...], WouldChange] = {}
        for changes in combinations(room, size):
            names = tuple(name for name, _ in changes)
            if len(set(names)) < size or len(found) == MOST:
                continue
            answer = _answer(judge, values, grades, judged, changes)
            if answer != judged.at_worst:
                told = {name: cell.value for name, cell in changes}
                found.setdefault((*names, answer), WouldChange(told, answer, _words(judge.space, changes)))
        if found:
            return tuple(found.values())
    return ()


def _room(space: Space, values: Mapping[str, Value], judged: OptionJudgement) -> Iterator[Change]:
    now = {**values, **{f"written.{name}": value for name, value in judged.written.items()}}
    now["written.site"] = judged.site
    for name, variable in space.variables.items():
        if not variable.fact.room or name not in now or not (mask := variable.mask_of(now[name])):
            continue
        here = mask.bit_length() - 1
        for _, index in sorted(
            (abs(index - here), index) for index in range(len(variable.cells)) if index != here
        ):
            yield name, variable.cells[index]


def _answer(
    judge: Judge,
    values: Mapping[str, Value],
    grades: Grades,
    judged: OptionJudgement,
    changes: tuple[Change, ...],
) -> Answer:
    facts = {name: cell.value for name, cell in changes if not name.startswith("written.")}
    written = {name.removeprefix("written."): cell.value for name, cell in changes if name not in facts}
    site = site_of(written.pop("site", judged.site))
    frame = judge.frame({**values, **facts}, *grades)
    card = judge.content.cards[judged.card]
    return judge.options.answers(frame, card, site, {**judged.written, **written})[1]


def _words(space: Space, changes: tuple[Change, ...]) -> str:
    return " and ".join(_change_words(space.variables[name].fact, cell) for name, cell in changes)


def _change_words(fact: Fact, cell: Cell) -> str:
    if cell.least is not None and cell.most is not None:
        top = fact.high if fact.high is not None else FAR
        if cell.most == top:
            return f"{fact.label.lower()} over {value_words(fact, cell.least)}"
        return f"{fact.label.lower()} between {plain(cell.least)} and {value_words(fact, cell.most)}"
    words = value_words(fact, cell.value)
    return words if fact.kind == "yes_no" and cell.value in fact.words else f"{fact.label.lower()}: {words}"
