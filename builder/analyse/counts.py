"""How many gave what, by the parts that a question of each kind has."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from builder.analyse.sitters import Sitting, Value
from builder.model.analysis import OptionCount
from builder.model.key import KeyAnswer
from builder.model.paper import PaperQuestion


def counts(
    answer: KeyAnswer, asked: PaperQuestion | None, sittings: Sequence[Sitting]
) -> tuple[OptionCount, ...]:
    """For options how many chose each; for steps and left sides how many put each rightly; each number typed.

    What is written is read by a person, and counted nowhere.
    """
    given = [sitting.given[answer.question] for sitting in sittings if answer.question in sitting.given]
    titles = _titles(asked)
    if answer.kind == "order":
        return tuple(_in_place(answer, titles, given))
    if answer.kind == "match":
        return tuple(_paired(answer, titles, given))
    if answer.kind == "number":
        return tuple(_numbers(answer, sittings))
    return tuple(
        OptionCount(
            option=option,
            title=titles.get(option, ""),
            right=option in answer.right,
            count=sum(option == one or (not isinstance(one, str) and option in one) for one in given),
        )
        for option in answer.options
    )


def _in_place(answer: KeyAnswer, titles: dict[str, str], given: Sequence[Value]) -> Iterator[OptionCount]:
    for place, step in enumerate(answer.right):
        count = sum(one[place : place + 1] == (step,) for one in given if not isinstance(one, str))
        yield OptionCount(
            option=step, title=f"in place {place + 1}: {titles.get(step, '')}", right=True, count=count
        )


def _paired(answer: KeyAnswer, titles: dict[str, str], given: Sequence[Value]) -> Iterator[OptionCount]:
    for left, right in answer.pairs:
        title = f"{titles.get(left, '')} – {titles.get(right, '')}" if titles else ""
        count = sum((left, right) in one for one in given if not isinstance(one, str))
        yield OptionCount(option=left, title=title, right=True, count=count)


def _numbers(answer: KeyAnswer, sittings: Sequence[Sitting]) -> Iterator[OptionCount]:
    found: Counter[tuple[str, bool]] = Counter()
    for sitting in sittings:
        value = sitting.given.get(answer.question)
        if isinstance(value, str):
            found[value, sitting.marks[answer.question] == 1] += 1
    for (value, right), count in sorted(found.items(), key=lambda one: (-one[1], one[0])):
        yield OptionCount(option=value, title="", right=right, count=count)


def _titles(asked: PaperQuestion | None) -> dict[str, str]:
    parts = (*asked.options, *asked.partners) if asked else ()
    return {one.id: " · ".join((one.title, *one.chips)) for one in parts}
