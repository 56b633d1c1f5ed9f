"""The language of conditions as JSON Schema, in the short forms in which authors write it."""

from __future__ import annotations

from collections.abc import Mapping

from builder.doors.schema import Schema
from builder.model.condition import BOUNDS
from builder.model.fact import Fact

ORDERED = ("number", "scale")
TEXT_OR_NUMBER: Schema = {"type": ["string", "number"]}


def value_of(fact: Fact | None) -> Schema:
    """The one value that a fact may have; anything plain where its declaration does not hold."""
    if fact is None:
        return TEXT_OR_NUMBER
    if fact.kind != "number":
        return {"enum": list(fact.words_of_values)}
    bounds = {"minimum": fact.low, "maximum": fact.high}
    return {"type": "number"} | {key: _plain(value) for key, value in bounds.items() if value is not None}


def recorded_of(facts: Mapping[str, Fact | None]) -> Schema:
    """A mapping from facts to the one value each has."""
    return closed({name: value_of(fact) | said_of(fact) for name, fact in facts.items()})


def limits_of(facts: Mapping[str, Fact | None]) -> Schema:
    """A mapping from names to what is asked of each: a value, a list of values, or a range."""
    return closed({name: asked_of(fact) | said_of(fact) for name, fact in facts.items()})


def condition_of(facts: Mapping[str, Fact | None] | None, itself: str) -> Schema:
    """A condition over these facts, or over any names where none are given.

    `itself` is where it stands in the schema, for its parts to point to.
    """
    part = {"$ref": itself}
    parts = {"type": "array", "minItems": 1, "items": part}
    words = {
        "all": {**parts, "description": "Every one of these conditions holds."},
        "any": {**parts, "description": "At least one of these conditions holds."},
        "not": {**part, "description": "This condition does not hold."},
        "recorded": {
            **({"type": "string"} if facts is None else {"enum": sorted(facts)}),
            "description": "A value is recorded for this fact.",
        },
    }
    limits = _any_names() if facts is None else limits_of(facts)
    return limits | {
        "properties": {**words, **limits["properties"]},
        "minProperties": 1,
        "description": "`fact: value`, a list of values, a range, or `all:`, `any:`, `not:`, `recorded:`.",
    }


def asked_of(fact: Fact | None) -> Schema:
    """What a condition may ask of one fact: a value, one of several, or a range where it has an order."""
    one = value_of(fact)
    forms: list[Schema] = [one, {"type": "array", "minItems": 1, "items": one}]
    if fact is None or fact.kind in ORDERED:
        forms.append(closed(dict.fromkeys(BOUNDS, one)) | {"minProperties": 1})
    return {"anyOf": forms}


def _any_names() -> Schema:
    return {"type": "object", "properties": {}, "additionalProperties": asked_of(None)}


def closed(properties: Schema) -> Schema:
    """A block that has no other keys than these."""
    return {"type": "object", "properties": properties, "additionalProperties": False}


def said_of(fact: Fact | None) -> Schema:
    """What an editor shows of a fact: its label and its question, with the unit."""
    if fact is None:
        return {}
    said = " ".join(part for part in (fact.question or "", f"({fact.unit})" if fact.unit else "") if part)
    return {"title": fact.label} | ({"description": said} if said else {})


def _plain(value: object) -> int | float:
    number = float(str(value))
    return int(number) if number.is_integer() else number
