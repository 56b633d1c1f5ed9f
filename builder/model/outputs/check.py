"""The shape `caseloom/check/1`: everything to fix in a course, and what was accepted."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from builder.diagnostic import Level
from builder.model.outputs.output import Named, Output, RuleIds


class Counts(Output):
    """How much there is to fix, by level; what is accepted is not counted."""

    error: int = Field(ge=0, description="What must be mended before a build.")
    warning: int = Field(ge=0, description="What is most likely a mistake.")
    advice: int = Field(ge=0, description="What could be better.")


class Spot(Output):
    """A place in a file."""

    file: str = Field(
        description="The file, relative to the course, with `/`; the tool's own under `content/`."
    )
    line: int = Field(ge=1, description="The line, from 1.")
    column: int = Field(ge=1, description="The character in the line, from 1.")


class Near(Spot):
    """Another place that belongs to the same thing to fix."""

    message: str = Field(description="What stands there.")


class ToFix(Spot):
    """One thing to fix."""

    check: Named
    level: Level = Field(description="How much it matters.")
    end_line: int = Field(ge=1, description="The line in which it ends.")
    end_column: int = Field(ge=1, description="The character after its last one.")
    path: tuple[str | int, ...] = Field(description="Where it stands in the values: keys, or numbers from 0.")
    message: str = Field(description="What is wrong; its wording may change within a format.")
    remedy: str = Field(description="How to mend it; its wording may change within a format.")
    rules: RuleIds
    related: tuple[Near, ...] = Field(description="Other places that belong to it.")


class Accepted(ToFix):
    """One thing that was left as it is, with a reason."""

    because: str = Field(description="The author's reason.")


class CheckOutput(Output):
    """What `check --json` prints."""

    format: Literal["caseloom/check/1"] = Field(description="The shape, and the number of its format.")
    counts: Counts = Field(description="How much there is of each level.")
    to_fix: tuple[ToFix, ...] = Field(description="Everything to fix, by place.")
    accepted: tuple[Accepted, ...] = Field(description="What was accepted, by place, with the reasons.")
