"""The value of an answer sheet, read as what a kind of question expects; another shape reads as nothing."""

from __future__ import annotations

Value = str | tuple[str | tuple[str, str], ...]


def chosen(value: Value) -> frozenset[str]:
    """The options chosen; what is no option's name becomes one that is never right."""
    if isinstance(value, str):
        return frozenset({value})
    return frozenset(one if isinstance(one, str) else "" for one in value)


def listed(value: Value) -> tuple[str, ...]:
    """The names in the order given."""
    return () if isinstance(value, str) else tuple(one for one in value if isinstance(one, str))


def paired(value: Value) -> frozenset[tuple[str, str]]:
    """The pairs put together, each once."""
    return (
        frozenset() if isinstance(value, str) else frozenset(one for one in value if isinstance(one, tuple))
    )


def written(value: Value) -> str:
    """What was written, or nothing."""
    return value if isinstance(value, str) else ""
