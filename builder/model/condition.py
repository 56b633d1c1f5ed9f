"""The closed little language of conditions: values, lists, ranges, `all`, `any`, `not`, `recorded`."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from typing import Annotated, Any

from pydantic import BeforeValidator, PlainSerializer, SkipValidation, WithJsonSchema

BOUNDS = ("over", "at_least", "below", "at_most")


@dataclass(frozen=True)
class Among:
    """The variable has one of these words (or equals one of these numbers)."""

    name: str
    values: tuple[str | Decimal, ...]


@dataclass(frozen=True)
class Within:
    """The number, or place on the scale, lies within these bounds; a missing bound is open."""

    name: str
    bounds: tuple[tuple[str, str | Decimal], ...]


@dataclass(frozen=True)
class AllOf:
    """Every part holds; with no part it always holds."""

    parts: tuple[Node, ...]


@dataclass(frozen=True)
class AnyOf:
    """At least one part holds."""

    parts: tuple[Node, ...]


@dataclass(frozen=True)
class Not:
    """The part does not hold."""

    part: Node


@dataclass(frozen=True)
class Recorded:
    """A value is recorded for this fact."""

    name: str


Node = Among | Within | AllOf | AnyOf | Not | Recorded


def parse(written: object) -> Node:
    """The condition meant by a parsed YAML value; ValueError says what is wrong with it."""
    if isinstance(written, Among | Within | AllOf | AnyOf | Not | Recorded):
        return written
    if not isinstance(written, dict) or not written:
        raise ValueError("write a condition as `fact: value`, or `all:`, `any:`, `not:`, `recorded:`")
    parts = tuple(_parse_entry(str(key), value) for key, value in written.items())
    return parts[0] if len(parts) == 1 else AllOf(parts)


def _parse_entry(key: str, value: object) -> Node:
    if key in ("all", "any"):
        if not isinstance(value, list) or not value:
            raise ValueError(f"`{key}` needs a list of conditions")
        parts = tuple(parse(one) for one in value)
        return AllOf(parts) if key == "all" else AnyOf(parts)
    if key == "not":
        return Not(parse(value))
    if key == "recorded":
        return _parse_recorded(value)
    if isinstance(value, dict):
        return _parse_range(key, value)
    values = value if isinstance(value, list) else [value]
    if not values:
        raise ValueError(f"`{key}` needs at least one value")
    return Among(key, tuple(_word_or_number(key, one) for one in values))


def _parse_recorded(value: object) -> Recorded:
    if not isinstance(value, str):
        raise ValueError("`recorded` takes the name of one fact")  # noqa: TRY004 - reaches the author
    return Recorded(value)


def _parse_range(key: str, value: dict[Any, Any]) -> Within:
    if not value or set(value) - set(BOUNDS):
        raise ValueError(f"`{key}` takes the bounds {', '.join(BOUNDS)}")
    return Within(key, tuple((bound, _word_or_number(key, one)) for bound, one in value.items()))


def _word_or_number(key: str, value: object) -> str | Decimal:
    if isinstance(value, str):
        return value
    if isinstance(value, int | float | Decimal) and not isinstance(value, bool):
        number = Decimal(str(value))
        if number.is_finite():
            return number
    raise ValueError(f"`{key}` needs a word or a number; for yes or no write `yes` or `no`")


def unparse(node: Node) -> dict[str, Any]:
    """The plain mapping that `parse` reads back as this condition."""
    match node:
        case Among(name, values):
            return {name: [_plain(one) for one in values]}
        case Within(name, bounds):
            return {name: {bound: _plain(one) for bound, one in bounds}}
        case AllOf(parts):
            return {"all": [unparse(one) for one in parts]}
        case AnyOf(parts):
            return {"any": [unparse(one) for one in parts]}
        case Not(part):
            return {"not": unparse(part)}
        case Recorded(name):
            return {"recorded": name}


def _plain(value: str | Decimal) -> str | int | float:
    if isinstance(value, str):
        return value
    return int(value) if value == value.to_integral_value() else float(value)


def atoms(node: Node) -> Iterator[Among | Within | Recorded]:
    """Every leaf of a condition, left to right."""
    match node:
        case AllOf(parts) | AnyOf(parts):
            for one in parts:
                yield from atoms(one)
        case Not(part):
            yield from atoms(part)
        case _:
            yield node


def polar_atoms(node: Node, *, positive: bool = True) -> Iterator[tuple[Among | Within | Recorded, bool]]:
    """Every leaf with its sign: False where an odd number of `not` stands above it."""
    match node:
        case AllOf(parts) | AnyOf(parts):
            for one in parts:
                yield from polar_atoms(one, positive=positive)
        case Not(part):
            yield from polar_atoms(part, positive=not positive)
        case _:
            yield node, positive


Condition = Annotated[
    SkipValidation[Node],
    BeforeValidator(parse),
    PlainSerializer(unparse),
    WithJsonSchema({"type": "object", "minProperties": 1}),
]


def parse_limits(written: object) -> object:
    """Conditions on the attributes of an option, from `{minutes: {at_most: 20}, barrier: yes}`."""
    if not isinstance(written, dict):
        return written
    return {name: _parse_limit(name, value) for name, value in written.items()}


def _parse_limit(name: str, value: object) -> Node:
    return value if isinstance(value, Among | Within) else _parse_entry(f"written.{name}", value)


def unparse_limits(limits: dict[str, Node]) -> dict[str, Any]:
    """The plain mapping that `parse_limits` reads back as these limits."""
    return {name: unparse(node)[f"written.{name}"] for name, node in limits.items()}


Limits = Annotated[
    dict[str, Annotated[Node, SkipValidation()]],
    BeforeValidator(parse_limits),
    PlainSerializer(unparse_limits),
    WithJsonSchema({"type": "object"}),
]
