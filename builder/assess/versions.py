"""The versions of a test, drawn before publishing by its plan; nothing here knows what is right."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from builder.assess.draw import Draw
from builder.assess.question import Shown
from builder.model.code import VERSIONS
from builder.model.plan import CourseTest, PlanRow

TELL_EACH_OTHER = (
    {"dose"},
    {"dose", "option"},
    {"dose", "session"},
    {"phase", "session"},
    {"ask_first", "session"},
    {"ask_first", "phase"},
    {"ask_first", "option"},
    {"stop", "session"},
    {"order", "session"},
    {"order", "phase"},
    {"order", "option"},
    {"order", "dose"},
)


@dataclass(frozen=True, order=True)
class Slot:
    """One place in a version: the row of the plan it fills."""

    row: int
    number: int


Drawn = dict[Slot, Shown]


@dataclass(frozen=True)
class Version:
    """One drawn version: its questions by place, and how many each row of the plan lacks."""

    name: str
    drawn: Drawn
    lacking: dict[int, int]


@dataclass
class _Drawing:
    """One version as it grows: each row's questions in drawn order, and those that earlier versions used."""

    fitting: tuple[tuple[Shown, ...], ...]
    used: Counter[str]

    def place(self, slot: Slot, drawn: Drawn, tried: set[str], path: frozenset[Slot]) -> Drawn | None:
        """The draw with this place filled too, other places refilled where they stood in the way."""
        path |= {slot}
        near: defaultdict[tuple[str, str], list[Slot]] = defaultdict(list)
        for other, one in drawn.items():
            near[one.origin, one.visit].append(other)
        for question in self._candidates(slot, drawn):
            about = near[question.origin, question.visit]
            moved = {other for other in about if tell_each_other(drawn[other], question)}
            if question.identity in tried or moved & path:
                continue
            tried.add(question.identity)
            kept = {other: one for other, one in drawn.items() if other not in moved}
            trial: Drawn | None = {**kept, slot: question}
            for other in sorted(moved):
                trial = None if trial is None else self.place(other, trial, tried, path)
            if trial is not None:
                return trial
        return None

    def _candidates(self, slot: Slot, drawn: Drawn) -> list[Shown]:
        cases = Counter(one.origin for one in drawn.values())
        visits = Counter((one.case, one.visit) for one in drawn.values())
        return sorted(
            self.fitting[slot.row],
            key=lambda one: (cases[one.origin], self.used[one.identity], visits[one.case, one.visit]),
        )


def drawn_versions(
    test: CourseTest, pool: Sequence[Shown], objectives: Mapping[str, tuple[str, ...]]
) -> Iterator[Version]:
    """Every version of a test; `objectives` are those of each case and each author's question in the pool.

    Cases that a version has used least come first, then questions that earlier versions used least.
    """
    used: Counter[str] = Counter()
    for name in VERSIONS[: test.versions]:
        draw = Draw(f"{test.seed}|{test.id}|{name}")
        fitting = tuple(tuple(draw.shuffled(_fitting(row, pool, objectives))) for row in test.plan)
        drawn = _drawn(test, _Drawing(fitting, used))
        used.update(one.identity for one in drawn.values())
        filled = Counter(slot.row for slot in drawn)
        lacking = {index: row.count - filled[index] for index, row in enumerate(test.plan)}
        yield Version(name, drawn, {index: count for index, count in lacking.items() if count})


def tell_each_other(one: Shown, other: Shown) -> bool:
    """Whether two questions may not share a version: the same, or one tells what is right in the other."""
    same_visit = (one.origin, one.visit) == (other.origin, other.visit)
    return one.identity == other.identity or (same_visit and {one.topic, other.topic} in TELL_EACH_OTHER)


def _fitting(row: PlanRow, pool: Iterable[Shown], objectives: Mapping[str, tuple[str, ...]]) -> list[Shown]:
    about = (one for one in pool if one.topic == row.topic and row.kind in (None, one.kind))
    fitting = [one for one in about if row.objective in objectives[one.origin]]
    return sorted(fitting, key=lambda one: one.identity)


def _drawn(test: CourseTest, drawing: _Drawing) -> Drawn:
    drawn: Drawn = {}
    for index, row in enumerate(test.plan):
        for number in range(row.count):
            placed = drawing.place(Slot(index, number), drawn, set(), frozenset())
            if placed is None:
                break
            drawn = placed
    return drawn
