"""The shape of a noun as JSON Schema: what an editor needs to complete, explain and flag what is written."""

from __future__ import annotations

from typing import Any

from pydantic import BaseModel
from pydantic.json_schema import GenerateJsonSchema, JsonSchemaValue
from pydantic_core import core_schema

from builder.model.noun import Noun

Schema = dict[str, Any]

DIALECT = "http://json-schema.org/draft-07/schema#"
OUTPUT_DIALECT = "https://json-schema.org/draft/2020-12/schema"
SAID = ("title", "description", "examples", "default")
_DIGITS = r"^\s*[-+]?[0-9_]+(\.0*)?\s*$"


class _Written(GenerateJsonSchema):
    """The schema of what is written, which is a little more than what is kept: digits may stand in quotes."""

    def int_schema(self, schema: core_schema.IntSchema) -> JsonSchemaValue:
        """A whole number, or its digits in quotes."""
        return super().int_schema(schema) | {"type": ["integer", "string"], "pattern": _DIGITS}


def schema_of(model: type[Noun], title: str) -> Schema:
    """The JSON Schema of a file that is to be this noun, every field titled."""
    schema: Schema = model.model_json_schema(schema_generator=_Written)
    for part in (schema, *schema.get("$defs", {}).values()):
        for name, field in part.get("properties", {}).items():
            field["title"] = name.replace("_", " ").capitalize()
            _named_by_rule(field)
    return {"$schema": DIALECT, **schema, "title": title}


def schema_of_output(model: type[BaseModel], title: str) -> Schema:
    """The JSON Schema of what is handed out as JSON; a later tool may add keys to it."""
    schema: Schema = model.model_json_schema()
    for part in (schema, *schema.get("$defs", {}).values()):
        if part.get("additionalProperties") is False:
            del part["additionalProperties"]
    return {"$schema": OUTPUT_DIALECT, **schema, "title": title}


def _named_by_rule(part: Schema) -> None:
    """Say of a mapping that its keys must fit, rather than what stands under keys that do."""
    if len(part.get("patternProperties", {})) == 1:
        ((fits, value),) = part.pop("patternProperties").items()
        part["propertyNames"] = {**part.get("propertyNames", {}), "pattern": fits}
        part["additionalProperties"] = value
    inner = [part.get("items"), part.get("additionalProperties"), *part.get("anyOf", ())]
    for one in inner:
        if isinstance(one, dict):
            _named_by_rule(one)


def places_at(whole: Schema, pattern: str) -> list[Schema]:
    """Every part of a schema where a value at `pattern` stands, such as `visits/*/card`; `@` are the keys."""
    found = [whole]
    for step in pattern.split("/"):
        found = [inner for outer in found for one in _plain(whole, outer) for inner in _inside(one, step)]
    return found


def put(place: Schema, shape: Schema) -> None:
    """Let only `shape` stand at a place of a schema, and, where nothing could stand, nothing still."""
    kept = {key: place[key] for key in SAID if key in place}
    optional = {"type": "null"} in place.get("anyOf", ())
    place.clear()
    place.update(kept | ({"anyOf": [shape, {"type": "null"}]} if optional else shape))


def _plain(whole: Schema, part: Schema) -> list[Schema]:
    if "$ref" in part:
        return _plain(whole, whole["$defs"][part["$ref"].rpartition("/")[2]])
    if "anyOf" in part:
        return [inner for one in part["anyOf"] for inner in _plain(whole, one)]
    return [part]


def _inside(part: Schema, step: str) -> list[Schema]:
    if step == "@":
        return [part.setdefault("propertyNames", {})] if part.get("type") == "object" else []
    if step == "*":
        inner = part.get("items", part.get("additionalProperties"))
        return [inner] if isinstance(inner, dict) else []
    return [part["properties"][step]] if step in part.get("properties", {}) else []
