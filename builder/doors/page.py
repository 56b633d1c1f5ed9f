"""The door to page templates: fills them with values, escaping everything that is not markup already."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

from jinja2 import BytecodeCache, Environment, FileSystemLoader, StrictUndefined, TemplateError
from jinja2.bccache import Bucket
from markupsafe import Markup

from builder.fault import Fault

Fill = Callable[[str, Mapping[str, Any]], str]


class _Compiled(BytecodeCache):
    """Templates compiled once a process; one whose source has changed is compiled again."""

    def __init__(self) -> None:
        self._known: dict[str, bytes] = {}

    def load_bytecode(self, bucket: Bucket) -> None:
        """Give what was compiled before, if it was of this source."""
        if bucket.key in self._known:
            bucket.bytecode_from_string(self._known[bucket.key])

    def dump_bytecode(self, bucket: Bucket) -> None:
        """Keep what was compiled."""
        self._known[bucket.key] = bucket.bytecode_to_string()


_COMPILED = _Compiled()


def markup(text: str) -> str:
    """A text that is markup already and is not escaped again; it is still a `str`."""
    return Markup(text)  # noqa: S704 - the one place where our own drawings are declared to be markup


def data_block(data: object) -> str:
    """Data as JSON that may stand inside a page: nothing in it can end the element it stands in."""
    return markup(json.dumps(data, ensure_ascii=False, separators=(",", ":")).replace("<", "\\u003c"))


def filler(folder: Path, known: Mapping[str, Any]) -> Fill:
    """A function that fills a template of `folder` by name; `known` is there in every template and macro."""
    made = Environment(
        loader=FileSystemLoader(folder),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
        bytecode_cache=_COMPILED,
    )
    made.globals.update(known)

    def fill(name: str, values: Mapping[str, Any]) -> str:
        try:
            return made.get_template(name).render(values)
        except TemplateError as error:
            raise Fault(
                f"The template {name} cannot be filled: {error}.", "Install caseloom again."
            ) from error

    return fill
