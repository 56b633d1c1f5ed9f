"""What one cell or effect says of an option, and the answer that grows from all of them."""

from __future__ import annotations

from dataclasses import dataclass, field
from operator import attrgetter

from builder.model.judgement import Fired


@dataclass(frozen=True)
class Said:
    """What one cell or effect says: as bad as it surely is, and at worst; `changes` are in words."""

    sure: int
    worst: int
    fired: Fired
    changes: tuple[str, ...] = ()
    order: tuple[bool, int] = field(init=False)

    def __post_init__(self) -> None:
        """Its place among the reasons: what fires comes first, and of that the worst."""
        object.__setattr__(self, "order", (self.fired.truth != "fires", -self.worst))


@dataclass(slots=True)
class Tally:
    """The answer as it grows: worst wins, apart for what is sure and what may be.

    `waiting`: by name, the cell and the rules whose say waits for a record.
    """

    sure: int = 0
    worst: int = 0
    said: list[Said] = field(default_factory=list)
    waiting: list[str] = field(default_factory=list)

    def take(self, one: Said, sure: int) -> None:
        """Count what one says, of which `sure` is as bad as it surely is here."""
        self.said.append(one)
        self.sure = max(self.sure, sure)
        self.worst = max(self.worst, one.worst)

    def reasons(self) -> tuple[Fired, ...]:
        """All that bears on the answer, in the order of telling."""
        told = sorted(self.said, key=_ORDER) if len(self.said) > 1 else self.said
        return tuple([one.fired for one in told])

    def change(self) -> str | None:
        """All that must be written otherwise, each once, in words."""
        words = [one for said in self.said for one in said.changes]
        return "; ".join(dict.fromkeys(words)) if words else None


_ORDER = attrgetter("order")
