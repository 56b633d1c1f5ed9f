"""Who is in and where they stand: from sheets on disk and from what phones hand over, nothing else."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from threading import Lock
from typing import Literal

from builder.model.arrival import Arrival
from builder.model.code import tidy
from builder.model.taught import Participant

State = Literal["missing", "joined", "working", "handed"]
QUIET = 60.0  # seconds; an open page tells every twenty where it stands


@dataclass
class Phone:
    """What the phone of one participant told last, and when, in seconds of a clock that only goes on."""

    answered: int
    of: int
    at: float


@dataclass(frozen=True)
class Place:
    """Where one participant stands."""

    name: str
    state: State
    answered: int = 0
    of: int = 0
    quiet: bool = False
    sheets: tuple[Arrival, ...] = ()


@dataclass
class Board:
    """Phones and sheets by first personal code."""

    phones: dict[str, Phone] = field(default_factory=dict)
    sheets: dict[str, dict[str, Arrival]] = field(default_factory=dict)
    _lock: Lock = field(default_factory=Lock)

    def here(self, owner: str, answered: int, of: int, now: float) -> None:
        """A phone tells where it stands."""
        with self._lock:
            self.phones[owner] = Phone(answered, of, now)

    def came(self, owner: str, arrival: Arrival) -> None:
        """A sheet has been kept; the same one twice is one."""
        with self._lock:
            self.sheets.setdefault(owner, {})[arrival.digest] = arrival

    def filled(self, arrivals: Iterable[Arrival], owners: Mapping[str, str]) -> None:
        """Put all sheets there are on the board, as at the start."""
        for one in arrivals:
            if owner := owners.get(tidy(one.code)):
                self.came(owner, one)

    def places(self, people: Iterable[Participant], now: float) -> list[Place]:
        """Everyone on the roster, in its order."""
        with self._lock:
            return [self._place(one, now) for one in people]

    def _place(self, person: Participant, now: float) -> Place:
        phone = self.phones.get(person.code)
        sheets = tuple(sorted(self.sheets.get(person.code, {}).values(), key=lambda one: (one.at, one.rev)))
        if phone is None:
            return Place(person.name, "handed" if sheets else "missing", sheets=sheets)
        state: State = "handed" if sheets else "working" if phone.answered else "joined"
        quiet = now - phone.at > QUIET
        return Place(person.name, state, phone.answered, phone.of, quiet, sheets)


def counted(places: Iterable[Place]) -> dict[str, int]:
    """How many are on the roster, in, working, done and missing."""
    states = [one.state for one in places]
    counts = {state: states.count(state) for state in ("missing", "joined", "working", "handed")}
    return {**counts, "all": len(states), "in": len(states) - counts["missing"]}
