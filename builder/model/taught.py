"""One run of a course: its dates, people and presence."""

from __future__ import annotations

from datetime import datetime

from pydantic import Field

from builder.model.noun import Day, Format, Id, Noun, Text


class TaughtClass(Noun):
    """`classes/<name>/class.yml`."""

    format: Format
    id: Id = Field(
        description="The name of the class, the same as the name of its folder.", examples=["spring"]
    )
    title: Text = Field(
        description="The class as it is headed.", examples=["Spring class in the winter quarters"]
    )
    dates: tuple[Day, ...] = Field(
        min_length=1,
        description="Its days in order; day 1 of the agenda is the first.",
        examples=[["2026-04-18", "2026-04-19"]],
    )
    zone: Text = Field(description="The time zone by its name.", examples=["America/New_York"])
    place: Text = Field(description="Where it is held.", examples=["Practice tent, Marrowfield"])
    approval: str = Field(
        default="", description="The approving body's course number for this run.", examples=["LF-0417-02-S"]
    )


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
