"""The JSON Schema of every sort of file, with the names and values that one course may write there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from builder.doors.schema import DIALECT, Schema, places_at, put, schema_of
from builder.model.case import Case
from builder.model.fact import Fact
from builder.model.noun import Noun
from builder.model.rule import Rule
from builder.model.tables import SeverityBook
from builder.read.editor.kinds import KINDS, WORDS
from builder.read.editor.known import Known
from builder.read.editor.language import condition_of, limits_of, recorded_of, value_of
from builder.read.refer.names import REFERENCES
from builder.read.refer.scopes import CONDITIONS, LIMITS, with_options
from builder.read.refer.values import FROM_CASE, RECORDED, WORKED_OUT

# What an author adds while writing: offered, but a name that the schema does not know yet is not flagged.
GROWING = ("objective", "case", "question", "station", "lesson", "test", "contested point")

_FORMAT = {"const": 1, "description": "The number of this file's format.", "examples": [1]}


def schemas(known: Known) -> dict[str, Schema]:
    """Every schema by the name of its sort of file."""
    found = {name: _schema(kind.model, kind.title, known) for name, kind in KINDS.items()}
    return found | {WORDS: _words()}


def _words() -> Schema:
    pair: Schema = {"type": "object", "properties": {"one": {"type": "string"}, "other": {"type": "string"}}}
    pair |= {"required": ["one", "other"], "additionalProperties": False}
    return {
        "$schema": DIALECT,
        "title": "The words of the interface",
        "type": "object",
        "properties": {"format": {"title": "Format", **_FORMAT}},
        "additionalProperties": {
            "description": "One text of the pages, by its name; or one for 1 and one for other numbers.",
            "anyOf": [{"type": "string"}, pair],
        },
    }


def _schema(model: type[Noun], title: str, known: Known) -> Schema:
    schema = schema_of(model, title)
    parts: dict[str, Schema] = {}
    for pattern, name, shape in _shapes(model, known):
        for place in places_at(schema, pattern):
            parts[name] = shape
            put(place, {"$ref": f"#/$defs/{name}"})
    for pattern, shape in _names(model, known):
        for place in places_at(schema, pattern):
            put(place, shape)
    if parts:
        schema["$defs"] = schema.get("$defs", {}) | parts
    return schema


def _shapes(model: type[Noun], known: Known) -> Iterator[tuple[str, str, Schema]]:
    """Where facts and conditions stand, under which name their shape is kept, and the shape."""
    facts = known.facts if model is not Rule else with_options(known.facts, known.attributes)
    for asked in (one for one in CONDITIONS if one.model is model):
        yield asked.pattern, "condition", condition_of(facts, "#/$defs/condition")
    if model is SeverityBook:  # what is only taught may ask for what nobody records
        yield "background/*/rows/*/when", "taught", condition_of(None, "#/$defs/taught")
    for asked in (one for one in LIMITS if one.model is model):
        if asked.pattern.endswith("given"):
            yield asked.pattern, "given", recorded_of(facts)
        else:
            yield asked.pattern, "limits", limits_of(known.attributes)
    for place in (one for one in RECORDED if one.model is model):
        yield place.pattern, *_recorded(place.pattern, known, attributes=place.attributes)


def _recorded(pattern: str, known: Known, *, attributes: bool) -> tuple[str, Schema]:
    if not attributes:
        return "recorded", recorded_of({k: v for k, v in known.facts.items() if k not in WORKED_OUT})
    if pattern == "ladder":
        numbers = {name: fact for name, fact in known.attributes.items() if not fact or fact.kind == "number"}
        ladder = recorded_of(numbers)
        rungs = {name: {"type": "array", "items": one} for name, one in ladder["properties"].items()}
        return "ladder", ladder | {"properties": rungs}
    return "written", recorded_of(known.attributes)


def _names(model: type[Noun], known: Known) -> Iterator[tuple[str, Schema]]:
    """Where names stand, and the names that may."""
    for reference in (one for one in REFERENCES if one.model is model):
        names = {"enum": list(known.names[reference.what])}
        if reference.what not in GROWING:
            yield reference.pattern, names
        elif names["enum"]:
            yield reference.pattern, {"anyOf": [names, {"type": "string", "maxLength": 4000}]}
    if model is Case:
        for pattern, name in FROM_CASE.items():
            yield from _from_case(pattern, known.facts, name)


def _from_case(pattern: str, facts: Mapping[str, Fact | None], name: str) -> Iterator[tuple[str, Schema]]:
    if name in facts and pattern != "tissue/haematoma":
        yield pattern, value_of(facts[name])
