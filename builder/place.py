"""Where a value stands in a file, kept from reading to the last message."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property

Step = str | int
Path = tuple[Step, ...]
Span = tuple[int, int, int, int]


@dataclass(frozen=True, order=True)
class Place:
    """A span in one file; lines and columns are 1-based code points, file is relative with `/`."""

    file: str
    line: int = 1
    column: int = 1
    end_line: int = 1
    end_column: int = 1


@dataclass
class Rows:
    """Every value and key of one file in its order: the row of what holds it, its step or name, and its span.

    A value without a span holds others and is none itself. Paths are only made when somebody asks.
    """

    values: list[tuple[int, Step, Span | None]] = field(default_factory=list)
    keys: list[tuple[int, str, Span]] = field(default_factory=list)

    def by_path(self) -> dict[Path, Span]:
        """The span of each value, by its path; of two in one place the later one."""
        spans = zip(self._paths, self.values, strict=True)
        return {path: span for path, (_, _, span) in spans if span is not None}

    def keys_by_path(self) -> dict[Path, Span]:
        """The span of each key, by the path of its value."""
        return {(*self._paths[row], name): span for row, name, span in self.keys}

    @cached_property
    def _paths(self) -> list[Path]:
        found: list[Path] = []
        for row, step, _ in self.values:
            found.append((*found[row], step) if found else ())
        return found


class Spans(Mapping[Path, Place]):
    """Places by path, each made only when asked for: a course has a hundred thousand and shows a few."""

    def __init__(self, file: str, made: Callable[[], dict[Path, Span]]) -> None:
        """Keep how to make the 0-based spans: line, column, end line, end column."""
        self._file = file
        self._made = made

    @cached_property
    def _spans(self) -> dict[Path, Span]:
        return self._made()

    def __getitem__(self, path: Path) -> Place:
        line, column, end_line, end_column = self._spans[path]
        return Place(self._file, line + 1, column + 1, end_line + 1, end_column + 1)

    def __contains__(self, path: object) -> bool:
        return path in self._spans

    def __iter__(self) -> Iterator[Path]:
        return iter(self._spans)

    def __len__(self) -> int:
        return len(self._spans)


@dataclass(frozen=True)
class Places:
    """The place of every value of one file, found by its path; `keys` holds the places of mapping keys."""

    whole: Place
    values: Mapping[Path, Place] = field(default_factory=dict)
    keys: Mapping[Path, Place] = field(default_factory=dict)
    lines: tuple[str, ...] = ()

    def of(self, path: Path) -> Place:
        """The place of the value at `path`, or of its nearest known parent."""
        for length in range(len(path), -1, -1):
            if (found := self.values.get(path[:length])) is not None:
                return found
        return self.whole

    def of_key(self, path: Path) -> Place:
        """The place of the key that ends `path`, or else of the value there."""
        return self.keys.get(path) or self.of(path)

    def within(self, path: Path) -> Path:
        """`path` without the steps this file does not know, such as the tags of a union."""
        known: Path = ()
        for step in path:
            if (*known, step) in self.values:
                known = (*known, step)
        return known
