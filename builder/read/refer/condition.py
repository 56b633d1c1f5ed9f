"""Walks a condition as written and says, part by part, what in it does not hold."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import NamedTuple

from builder.model.condition import BOUNDS
from builder.model.fact import Fact
from builder.place import Path
from builder.read.nearest import quoted, suggest
from builder.read.refer.values import Told, misfit

_SHAPE = "condition_malformed"
_HOW = "Write `fact: value`, a list of values, a range, or `all:`, `any:`, `not:`, `recorded:`."


@dataclass(frozen=True)
class Scope:
    """What a condition may ask about; `closed` says of other known names why they cannot be asked here."""

    known: Mapping[str, Fact | None]
    closed: Mapping[str, str] = field(default_factory=dict)
    what: str = "fact"


class Fault(NamedTuple):
    """One fault of a condition; `key` where its key is meant rather than its value."""

    path: Path
    told: Told
    key: bool = False


def condition_faults(written: object, path: Path, scope: Scope) -> Iterator[Fault]:
    """Everything wrong with a condition as written."""
    if not isinstance(written, dict) or not written:
        yield Fault(path, Told(_SHAPE, f"{quoted(written).capitalize()} is no condition.", _HOW))
        return
    for key, value in written.items():
        at = (*path, key)
        match key:
            case "all" | "any":
                yield from _parts(value, at, scope)
            case "not":
                yield from condition_faults(value, at, scope)
            case "recorded":
                yield from _name(value if isinstance(value, str) else quoted(value), at, scope, key=False)
            case _:
                yield from atom_faults(key, value, at, scope)


def atom_faults(name: str, value: object, path: Path, scope: Scope) -> Iterator[Fault]:
    """Everything wrong with one name and what is asked of it."""
    yield from (unknown := list(_name(name, path, scope, key=True)))
    fact = None if unknown else scope.known[name]
    if isinstance(value, dict):
        yield from _range_faults(name, value, path, fact)
        return
    for at, one in (
        [((*path, step), one) for step, one in enumerate(value)]
        if isinstance(value, list)
        else [(path, value)]
    ):
        if isinstance(one, dict | list) or one is None:
            yield Fault(at, Told(_SHAPE, f"`{name}` needs a word or a number, not {quoted(one)}.", _HOW))
        elif fact and (told := misfit(name, fact, one)):
            yield Fault(at, told)


def _parts(value: object, path: Path, scope: Scope) -> Iterator[Fault]:
    if not isinstance(value, list) or not value:
        remedy = "Write one condition a line after `- `."
        yield Fault(path, Told(_SHAPE, f"`{path[-1]}` needs a list of conditions.", remedy))
        return
    for step, part in enumerate(value):
        yield from condition_faults(part, (*path, step), scope)


def _name(name: str, path: Path, scope: Scope, *, key: bool) -> Iterator[Fault]:
    if name in scope.closed:
        yield Fault(
            path, Told("condition_out_of_reach", scope.closed[name], "Ask for something else here."), key
        )
    elif name not in scope.known:
        told = Told(
            f"{scope.what}_unknown", f"There is no {scope.what} {quoted(name)}.", suggest(name, scope.known)
        )
        yield Fault(path, told, key)


def _range_faults(name: str, bounds: dict[str, object], path: Path, fact: Fact | None) -> Iterator[Fault]:
    if not bounds:
        yield Fault(
            path, Told(_SHAPE, f"The range of `{name}` is empty.", f"Give one of {', '.join(BOUNDS)}.")
        )
    elif fact and fact.kind in ("yes_no", "one_of"):
        message = f"`{name}` has no order, so it cannot have a range."
        yield Fault(path, Told("condition_no_order", message, "Write one of its values, or a list of them."))
        return
    for bound, value in bounds.items():
        at = (*path, bound)
        if bound not in BOUNDS:
            yield Fault(at, Told(_SHAPE, f"{quoted(bound)} is no bound.", suggest(bound, BOUNDS)), key=True)
        elif isinstance(value, dict | list) or value is None:
            yield Fault(at, Told(_SHAPE, f"`{bound}` needs a word or a number, not {quoted(value)}.", _HOW))
        elif fact and (told := misfit(name, fact, value)):
            yield Fault(at, told)
