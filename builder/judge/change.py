"""What would change an answer: the smallest change among things that change in the room."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import combinations
from typing import TYPE_CHECKING

from builder.judge.space import Space, Value
from builder.judge.words import value_words
from builder.model.card import site_of
from builder.model.judgement import OptionJudgement, WouldChange
from builder.model.tables import Severity

if TYPE_CHECKING:
    from builder.judge.judge import Judge

Change = tuple[str, Value]
MOST = 4


def would_change(
    judge: Judge,
    values: Mapping[str, Value],
    severity: tuple[Severity | None, Severity | None],
    judged: OptionJudgement,
) -> tuple[WouldChange, ...]:
    """The changes of one thing that give another answer at worst, or else of two; at most four of a size.

    Only what can change in the room is tried: signs, time, preparation, dose, site; never a flag, a drug,
    an age or consent. Every cell of every such variable is tried, so no smaller change is missed.
    """
    room = list(_room(judge.space, values, judged))
    for size in (1, 2):
        found = []
        for changes in combinations(room, size):
            if len({name for name, _ in changes}) < size:
                continue
            if (one := _try(judge, values, severity, judged, dict(changes))) is not None:
                found.append(one)
            if len(found) == MOST:
                break
        if found:
            return tuple(found)
    return ()


def _room(space: Space, values: Mapping[str, Value], judged: OptionJudgement) -> Iterator[Change]:
    now = {**values, **{f"written.{name}": value for name, value in judged.written.items()}}
    now["written.site"] = judged.site
    for name, variable in space.variables.items():
        if not variable.fact.room or name not in now:
            continue
        here = variable.mask_of(now[name])
        for index, cell in enumerate(variable.cells):
            if not here >> index & 1:
                yield name, cell.value


def _try(
    judge: Judge,
    values: Mapping[str, Value],
    severity: tuple[Severity | None, Severity | None],
    judged: OptionJudgement,
    changes: dict[str, Value],
) -> WouldChange | None:
    facts = {name: value for name, value in changes.items() if not name.startswith("written.")}
    written = {name.removeprefix("written."): value for name, value in changes.items() if name not in facts}
    site = site_of(written.pop("site", judged.site))
    frame = judge.frame({**values, **facts}, *severity)
    card = judge.content.cards[judged.card]
    answer = judge.options.answers(frame, card, site, {**judged.written, **written})[1]
    if answer == judged.at_worst:
        return None
    return WouldChange(changes, answer, _words(judge.space, changes))


def _words(space: Space, changes: Mapping[str, Value]) -> str:
    parts = []
    for name, value in changes.items():
        fact = space.variables[name].fact
        words = value_words(fact, value)
        parts.append(
            words if fact.kind == "yes_no" and value in fact.words else f"{fact.label.lower()}: {words}"
        )
    return " and ".join(parts)
