"""The shape of every line that `host --json` prints: `caseloom/host/1`."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from builder.model.outputs.output import Named, Output


class HostWays(Output):
    """Where the host can be reached."""

    instructor: str = Field(description="The address of the instructor's page, with the key that opens once.")
    hall: str = Field(description="The address for phones; empty while the hall is shut.")
    addresses: tuple[str, ...] = Field(description="The machine's addresses on which the hall can be opened.")


class HostCounts(Output):
    """What has come in so far."""

    sheets: int = Field(ge=0, description="Answer sheets in the inbox of the class.")
    people: int = Field(ge=0, description="People of the roster whose sheets these are.")
    of: int = Field(ge=0, description="People on the roster.")
    set_aside: int = Field(ge=0, description="Sheets that could not be taken and were set aside.")


class HostOutput(Output):
    """One line of `host --json`: the host has opened, has something to say, or has ended."""

    format: Literal["caseloom/host/1"] = Field(description="The shape, and the number of its format.")
    event: Literal["opened", "notice", "ended"] = Field(description="What the line is about.")
    klass: Named = Field(alias="class")
    line: str = Field(description="A notice in words; empty where the line is none.")
    ways: HostWays | None = Field(description="Where the host can be reached, where it has just opened.")
    counts: HostCounts | None = Field(description="What has come in, where the line is no notice.")
