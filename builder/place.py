"""Where a value stands in a file, kept from reading to the last message."""

from __future__ import annotations

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


@dataclass(frozen=True)
class Places:
    """The place of every value of one file, found by its path; `keys` holds the places of mapping keys."""

    whole: Place
    values: dict[Path, Place] = field(default_factory=dict)
    keys: dict[Path, Place] = field(default_factory=dict)
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
