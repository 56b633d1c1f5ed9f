"""Every file that was read, and what each sort of name may refer to."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import TypeVar

from builder.doors.shape import pour
from builder.model.board import BoardRules
from builder.model.card import Card
from builder.model.case import Case
from builder.model.course import CourseFile
from builder.model.fact import Fact, FactBook, ScreeningBook
from builder.model.noun import Noun
from builder.model.question import AuthorQuestion
from builder.model.rule import Rule
from builder.model.station import Station
from builder.model.tables import ReferenceBook
from builder.read.select import select
from builder.read.written import Entry, Written

N = TypeVar("N", bound=Noun)

GIVEN_GROUPS = ("hands_on", "techniques", "all")
_NAMED_IN: dict[str, tuple[type[Noun], ...]] = {
    "fact": (FactBook,),
    "source": (ReferenceBook,),
    "screening set": (ScreeningBook,),
    "objective": (CourseFile,),
    "test": (CourseFile,),
    "group": (Card,),
    "contested point": (Card, Rule),
}


@dataclass(frozen=True)
class Shelf:
    """All entries of content and course, and the lessons by their file's stem."""

    entries: tuple[Entry, ...]
    lessons: Mapping[str, Written] = field(default_factory=dict)

    def of(self, model: type[Noun]) -> Iterator[Written]:
        """Every file that is to be a noun of this type, sound or not."""
        return (entry.written for entry in self.entries if entry.model is model)

    def noun(self, model: type[N]) -> N | None:
        """The noun of the only file of its type, if it makes one."""
        found = (entry.noun for entry in self.entries if entry.model is model)
        return next((noun for noun in found if isinstance(noun, model)), None)

    @cached_property
    def unsure(self) -> frozenset[type[Noun]]:
        """The sorts of file of which some could not be read to the end: what they name is not known."""
        return frozenset(entry.model for entry in self.entries if not entry.written.whole)

    def knows(self, what: str, name: str) -> bool:
        """Whether something of this sort has this name, or may have it in a file that could not be read."""
        return name in self.names[what] or not self.unsure.isdisjoint(_NAMED_IN.get(what, ()))

    @cached_property
    def facts(self) -> dict[str, Fact | None]:
        """Every declared fact of a client; None for one whose declaration does not hold."""
        return self._facts("facts")

    @cached_property
    def attributes(self) -> dict[str, Fact | None]:
        """Every declared attribute of a written option; None for one whose declaration does not hold."""
        return self._facts("written")

    @cached_property
    def names(self) -> Mapping[str, frozenset[str]]:
        """What may be referred to, by what it is called in messages."""
        return {
            "card": self._ids(Card),
            "case": self._ids(Case),
            "figure": self._drawn() | self._ids(Case),
            "question": self._ids(AuthorQuestion),
            "station": self._ids(Station),
            "board": self._ids(BoardRules),
            "lesson": frozenset(self.lessons),
            "fact": frozenset(self.facts),
            "source": self._texts(ReferenceBook, "sources/@"),
            "screening set": self._texts(ScreeningBook, "sets/@"),
            "objective": self._texts(CourseFile, "objectives/*/id"),
            "test": self._texts(CourseFile, "tests/*/id"),
            "group": self._texts(Card, "groups/*") | set(GIVEN_GROUPS),
            "contested point": self._texts(Card, "baseline/*/contested/point")
            | self._texts(Rule, "contested/point"),
        }

    def _facts(self, part: str) -> dict[str, Fact | None]:
        declared = (one for written in self.of(FactBook) for one in select(written.value, f"{part}/*"))
        return {str(path[-1]): pour(Fact, data)[0] for path, data in declared}

    def _ids(self, model: type[Noun]) -> frozenset[str]:
        return frozenset(name for written in self.of(model) for name in (written.id, written.stem))

    def _drawn(self) -> frozenset[str]:
        """The cards that have a figure, and those of which it cannot be told."""
        cards = (entry for entry in self.entries if entry.model is Card)
        asked = (one for one in cards if not isinstance(one.noun, Card) or one.noun.drawn)
        return frozenset(name for one in asked for name in (one.written.id, one.written.stem))

    def _texts(self, model: type[Noun], pattern: str) -> frozenset[str]:
        picked = (value for written in self.of(model) for _, value in select(written.value, pattern))
        return frozenset(value for value in picked if isinstance(value, str))
