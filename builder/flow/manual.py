"""The tool's own handbook, built by the tool from its commands, its schemas and its checks."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

from builder.disk import shipped, swapped_in
from builder.doors.site import build_site
from builder.fault import Fault
from builder.flow.explain_check import explain_check
from builder.flow.kinds import KINDS
from builder.model.course import SiteConfig
from builder.model.manual import (
    Manual,
    ManualCheck,
    ManualCommand,
    ManualExample,
    ManualField,
    ManualFile,
)
from builder.model.site import SitePlan
from builder.read.editor.kinds import KINDS as FILES
from builder.read.editor.known import known_in
from builder.read.editor.schemas import schemas
from builder.read.words import read_words
from builder.read.written import read_entry
from builder.render.manual import manual_site

DEEPEST = 4
MOST_EXAMPLE = 90


def manual_plan(commands: tuple[ManualCommand, ...]) -> SitePlan:
    """The plan of the handbook: every command, every sort of file, every name that `check` may print."""
    words = read_words(shipped("content")).texts
    site = read_entry(SiteConfig, shipped("site_config.yml"), "site_config.yml").noun
    if words is None or not isinstance(site, SiteConfig):
        raise Fault(
            "The words or the look that come with the tool cannot be read.", "Install caseloom again."
        )
    files, checks = tuple(_files()), tuple(_check(name) for name in KINDS)
    return manual_site(Manual(commands, files, checks), words, site)


def write_manual(commands: tuple[ManualCommand, ...], out: Path) -> Path:
    """Build the handbook into a folder that stands whole at the end; its first page."""
    plan = manual_plan(commands)
    with swapped_in(out) as draft:
        build_site(plan, draft)
    return out / "index.html"


def _files() -> Iterator[ManualFile]:
    made = schemas(known_in(shipped("content"), None))
    for name, kind in FILES.items():
        yield ManualFile(name, kind.title, kind.where, tuple(_fields(made[name], made[name], "", 1)))


def _fields(
    schema: Mapping[str, Any], node: Mapping[str, Any], before: str, depth: int
) -> Iterator[ManualField]:
    """Every field below a node, down to where the shape repeats or a course's own names begin."""
    needed = set(node.get("required", ()))
    for key, spec in node.get("properties", {}).items():
        name = f"{before}{key}"
        yield ManualField(name, key in needed, str(spec.get("description", "")), _example(spec))
        inner = _inner(schema, spec)
        if depth < DEEPEST and inner is not node and "title" in inner:
            yield from _fields(schema, inner, f"{name}.", depth + 1)


def _inner(schema: Mapping[str, Any], spec: Mapping[str, Any]) -> Mapping[str, Any]:
    """The block that a field holds, or holds a list of; the field itself where it holds none."""
    for key in ("items", "additionalProperties"):
        if isinstance(spec.get(key), dict):
            return _inner(schema, spec[key])
    for one in (*spec.get("anyOf", ()), *spec.get("allOf", ())):
        if "$ref" in one or "items" in one:
            return _inner(schema, one)
    if "$ref" in spec:
        found = schema.get("$defs", {}).get(str(spec["$ref"]).rpartition("/")[2], {})
        return found if isinstance(found, dict) else {}
    return spec if "properties" in spec else {}


def _example(spec: Mapping[str, Any]) -> str:
    examples = spec.get("examples", ())
    if not examples:
        return ""
    first = examples[0]
    text = first if isinstance(first, str) else json.dumps(first, ensure_ascii=False)
    return text if len(text) <= MOST_EXAMPLE else text[:MOST_EXAMPLE] + "…"


def _check(name: str) -> ManualCheck:
    data = explain_check(name)[1]
    bad, good = (tuple(_examples(data[side])) for side in ("bad", "good"))
    return ManualCheck(name, KINDS[name].level, data["says"], data["why"], bad, good)


def _examples(told: Mapping[str, Any]) -> Iterator[ManualExample]:
    lines = (told["text"] or "").strip("\n").split("\n")
    shown = [line if len(line) <= MOST_EXAMPLE else line[:MOST_EXAMPLE] + "…" for line in lines[:30]]
    text = "\n".join([*shown, *(["…"] if len(lines) > len(shown) else [])])
    yield ManualExample(
        told["file"], told["at"], "".join(c if c.isprintable() or c == "\n" else "·" for c in text)
    )
    for one in told["more"]:
        yield from _examples(one)
