"""The door to page templates: fills them with values, escaping everything that is not markup already."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined, TemplateError
from markupsafe import Markup

from builder.fault import Fault

Fill = Callable[[str, Mapping[str, Any]], str]


def markup(text: str) -> str:
    """A text that is markup already and is not escaped again; it is still a `str`."""
    return Markup(text)  # noqa: S704 - the one place where our own drawings are declared to be markup


def filler(folder: Path, known: Mapping[str, Any]) -> Fill:
    """A function that fills a template of `folder` by name; `known` is there in every template and macro."""
    made = Environment(
        loader=FileSystemLoader(folder),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
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
