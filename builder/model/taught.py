"""One run of a course: its dates, people and presence."""

from __future__ import annotations

from datetime import date, datetime

from pydantic import Field

from builder.model.noun import Format, Id, Noun, Text


class TaughtClass(Noun):
    """`classes/<name>/class.yml`."""

    format: Format
    id: Id
    title: Text
    dates: tuple[date, ...] = Field(min_length=1)
    zone: Text = Field(description="The time zone's name, such as America/New_York.")
    place: Text
    approval: str = Field(default="", description="The approving body's course number for this run.")


class Participant(Noun):
    """One row of `roster.csv`; the name as typed stands beside the name on the licence."""

    name: Text
    name_on_licence: str = ""
    licence: str = ""
    email: str = ""
    report: bool = False
    codes: tuple[str, ...] = Field(min_length=1, description="Personal codes, one an attempt, first to last.")

    @property
    def code(self) -> str:
        """The first personal code, by which the record knows this person."""
        return self.codes[0]


class Presence(Noun):
    """One row of `attendance.csv`: in and out on one day, with the zone's offset."""

    code: Text
    day: int
    arrived: datetime
    left: datetime
