"""Whether what a sheet gives for a question can be an answer to it: of its kind, and of its own parts."""

from __future__ import annotations

from collections.abc import Collection

from builder.model.key import KeyAnswer

Value = str | tuple[str | tuple[str, str], ...] | None


def fits(asked: KeyAnswer, value: Value) -> bool:
    """Nothing given always fits; a number and a text may be anything that was typed."""
    if value is None:
        return True
    if asked.kind in ("one", "panel"):
        return isinstance(value, str) and value in asked.options
    if asked.kind in ("number", "text"):
        return isinstance(value, str)
    if isinstance(value, str):
        return False
    if asked.kind == "match":
        return _pairs(value, asked.options, asked.partners)
    names = [one for one in value if isinstance(one, str)]
    known = len(names) == len(value) == len(set(names)) and set(names) <= set(asked.options)
    return known and (asked.kind == "many" or len(names) == len(asked.options))


def _pairs(value: tuple[object, ...], lefts: Collection[str], partners: Collection[str]) -> bool:
    pairs = [one for one in value if isinstance(one, tuple)]
    once = len({left for left, _ in pairs}) == len(pairs) == len(value)
    return once and all(left in lefts and right in partners for left, right in pairs)
