"""One run of a course: its dates, people and presence."""

from __future__ import annotations

from datetime import datetime
from typing import Literal

from pydantic import Field

from builder.model.noun import Day, Format, Id, Noun, Text


class AcceptedRow(Noun):
    """What may stay as it is in a row of a sheet, where no comment can stand."""

    check: Text = Field(description="The name that is printed of it.", examples=["email_odd"])
    file: Literal["roster.csv", "attendance.csv"] = Field(
        description="The sheet it is found in.", examples=["roster.csv"]
    )
    code: Text = Field(description="A personal code that stands in the row.", examples=["37QH7JVQH"])
    because: Text = Field(
        description="Why it may stay.", examples=["Two sisters have the same name on their licences."]
    )


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
    accepted: tuple[AcceptedRow, ...] = Field(
        default=(),
        description="Warnings and advice about rows of the roster and the attendance that may stay.",
        examples=[
            [{"check": "email_odd", "file": "roster.csv", "code": "37QH7JVQH", "because": "As she gave it."}]
        ],
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
