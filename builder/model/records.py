"""What the record keeps: sheets, attempts, decisions and certificates, and what each rests on."""

from __future__ import annotations

from collections import defaultdict
from datetime import date, datetime
from typing import Literal

from pydantic import Field

from builder.model.answers import AnswerSheet
from builder.model.board import BoardRules
from builder.model.code import tidy
from builder.model.course import CourseFile
from builder.model.marking import Marked
from builder.model.noun import Noun, Share
from builder.model.station import Station, StationSheet
from builder.model.taught import Participant, Presence, TaughtClass

RequirementKind = Literal["test", "must_pass", "station", "attendance"]


class ClassFolder(Noun):
    """One class with its people and what was seen of them; `course` is the id of its course."""

    course: str
    taught: TaughtClass
    participants: tuple[Participant, ...]
    presences: tuple[Presence, ...] = ()
    station_sheets: tuple[StationSheet, ...] = ()
    markings: tuple[Marked, ...] = ()

    @property
    def owners(self) -> dict[str, str]:
        """The first personal code of whoever holds a code, by that code."""
        return {tidy(code): person.code for person in self.participants for code in person.codes}

    def apart(self) -> dict[str, ClassFolder]:
        """By first personal code, the same class with one participant alone and what was seen of them."""
        owners = self.owners
        presences: dict[str | None, list[Presence]] = defaultdict(list)
        sheets: dict[str | None, list[StationSheet]] = defaultdict(list)
        markings: dict[str | None, list[Marked]] = defaultdict(list)
        for row in self.presences:
            presences[owners.get(tidy(row.code))].append(row)
        for sheet in self.station_sheets:
            sheets[owners.get(tidy(sheet.code))].append(sheet)
        for marked in self.markings:
            markings[owners.get(tidy(marked.code))].append(marked)
        return {
            one.code: self.model_copy(
                update={
                    "participants": (one,),
                    "presences": tuple(presences[one.code]),
                    "station_sheets": tuple(sheets[one.code]),
                    "markings": tuple(markings[one.code]),
                }
            )
            for one in self.participants
        }


class Terms(Noun):
    """What a participant of a course must meet; `boards` are those the course names, in its order."""

    course: CourseFile
    boards: tuple[BoardRules, ...] = Field(min_length=1)
    stations: tuple[Station, ...] = ()


class KeptSheet(Noun):
    """One answer sheet in the record: the digest of its bytes, when it came to us (UTC), and what it says."""

    digest: str
    received: datetime
    sheet: AnswerSheet


class Mark(Noun):
    """What one question earned, from 0 to 1; nothing yet where it `waits` for a person to mark it."""

    question: str
    mark: Share
    given: bool
    must_pass: bool
    waits: bool = False


class Attempt(Noun):
    """One graded try; `total` is the mean of the marks, `counts` says whether it lies within the tries."""

    test: str
    number: int
    code: str
    version: str
    sheet: str
    edition: str
    key_edition: str
    marks: tuple[Mark, ...]
    total: Share
    pass_mark: Share
    counts: bool
    passed: bool

    @property
    def waits(self) -> int:
        """How many of its answers wait for a person to mark them."""
        return sum(one.waits for one in self.marks)


class Requirement(Noun):
    """One thing a certificate needs: met or not, or not decided yet (`open`), and why, in words."""

    kind: RequirementKind
    name: str
    met: bool
    reason: str
    open: bool = False


class Basis(Noun):
    """What a decision rests on: sheets by digest, keys by edition, and fingerprints of terms and evidence."""

    sheets: tuple[str, ...]
    keys: tuple[str, ...]
    terms: str
    evidence: str


class Decision(Noun):
    """Whether one participant, known by the first personal code, met everything."""

    course: str
    klass: str
    code: str
    attempts: tuple[Attempt, ...]
    requirements: tuple[Requirement, ...]
    basis: Basis

    @property
    def met(self) -> bool:
        """Whether every requirement is met."""
        return all(one.met for one in self.requirements)

    @property
    def open(self) -> bool:
        """Whether all that is not met is only not decided yet."""
        return not self.met and all(one.met or one.open for one in self.requirements)


class Certificate(Noun):
    """One certificate as it stands; `person`, `decision` are rows of the record, `printed` names nobody."""

    provider: str
    number: int
    revision: int
    course: str
    klass: str
    code: str
    person: int
    decision: int
    issued: date
    printed: dict[str, str]

    @property
    def serial(self) -> str:
        """The serial as printed; a reissue keeps its number and says that it is one."""
        return f"{self.number:05d}" + (f"-R{self.revision}" if self.revision else "")
