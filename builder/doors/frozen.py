"""The door to kept values: nouns as JSON, and back through their models; what does not fit is nothing."""

from __future__ import annotations

from typing import Any, Generic, TypeVar

from pydantic import TypeAdapter, ValidationError

T = TypeVar("T")


class Frozen(Generic[T]):
    """How values of one type are kept as JSON."""

    def __init__(self, kind: Any) -> None:  # noqa: ANN401 - a type such as tuple[Hole, ...] has no type of its own
        self._adapter: TypeAdapter[T] = TypeAdapter(kind)

    def frozen(self, value: T) -> bytes:
        """The value as JSON."""
        return self._adapter.dump_json(value)

    def thawed(self, data: bytes | None) -> T | None:
        """The value that was kept; None where nothing was, or something that is no such value."""
        if data is None:
            return None
        try:
            return self._adapter.validate_json(data)
        except ValidationError:
            return None
