"""Fills the templates of new files: `<<name>>` becomes a YAML value, `<<=name>>` stands as it is."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from pathlib import Path

from builder.doors.scalar import meaning

LOOK = Path(__file__).parent / "look"
_PLACE = re.compile(r"<<(=?)([a-z_]+)>>")
_PLAIN = re.compile(r"[^\W_](?:[\w %/().;'-]*[\w%().;'])?")


def filled(template: str, values: Mapping[str, str]) -> str:
    """The text of a new file; a value that is not given is a KeyError."""
    text = (LOOK / template).read_text(encoding="utf-8")
    return _PLACE.sub(lambda found: _value(values[found[2]], as_it_is=bool(found[1])), text)


def _value(value: str, *, as_it_is: bool) -> str:
    return value if as_it_is else as_yaml(value)


def as_yaml(value: str) -> str:
    """A text as one YAML scalar that reads back as the same text, inside brackets too."""
    once = " ".join("".join(one if one.isprintable() else " " for one in value).split())
    if _PLAIN.fullmatch(once) and isinstance(meaning(once), str):
        return once
    return json.dumps(once, ensure_ascii=False)


def as_flow(value: object) -> str:
    """Plain data as YAML in one line."""
    if isinstance(value, Mapping):
        return "{" + ", ".join(f"{key}: {as_flow(one)}" for key, one in value.items()) + "}"
    if isinstance(value, list | tuple):
        return "[" + ", ".join(as_flow(one) for one in value) + "]"
    return as_yaml(value) if isinstance(value, str) else str(value)
