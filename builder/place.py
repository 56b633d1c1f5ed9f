"""Where a value stands in a file, kept from reading to the last message."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

Step = str | int
Path = tuple[Step, ...]


@dataclass(frozen=True, order=True)
class Place:
    """A span in one file; lines and columns are 1-based code points, file is relative with `/`."""

    file: str
    line: int = 1
    column: int = 1
    end_line: int = 1
    end_column: int = 1


class Spans(Mapping[Path, Place]):
    """Places by path, each made only when asked for: a course has a hundred thousand and shows a few."""

    def __init__(self, file: str, spans: dict[Path, tuple[int, int, int, int]]) -> None:
        """Keep 0-based spans: line, column, end line, end column."""
        self._file = file
        self._spans = spans

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
