"""Practical stations: what is shown, what is marked, and what fails regardless of points."""

from __future__ import annotations

from pydantic import Field

from builder.model.noun import Format, Id, Noun, Share, Text


class Criterion(Noun):
    """One thing an examiner marks, with a sentence for each level from 0 upwards."""

    id: Id
    title: Text
    levels: tuple[Text, ...] = Field(min_length=2, max_length=6)
    weight: int = Field(default=1, ge=1, le=10)


class AutomaticFail(Noun):
    """Something seen that fails the station whatever the points; answered yes or no."""

    id: Id
    seen: Text


class Station(Noun):
    """One practical station."""

    format: Format
    id: Id
    title: Text
    case: Id
    visit: Id
    minutes: int = Field(ge=1, le=120)
    participant: Text
    practice_client: Text
    examiner: Text
    objectives: tuple[Id, ...] = Field(
        default=(), description="What it proves; empty means all that its case is for."
    )
    criteria: tuple[Criterion, ...] = Field(min_length=1)
    automatic_fails: tuple[AutomaticFail, ...] = Field(min_length=1)
    pass_mark: Share


class StationSheet(Noun):
    """`classes/<name>/stations/*.yml`: what one examiner saw of one participant."""

    format: Format
    station: Id
    code: Text = Field(description="The participant's personal code.")
    examiner: Text
    marked: dict[Id, int]
    seen: tuple[Id, ...] = Field(default=(), description="Automatic fails that were seen.")
    note: Text | None = None
