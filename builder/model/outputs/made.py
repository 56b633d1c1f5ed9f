"""The shapes of what is written or listed: `build`, `export`, `schema`, `flags` and `reviews`, all `/1`."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from builder.model.outputs.output import Named, Output


class BuildOutput(Output):
    """What `build --json` prints."""

    format: Literal["caseloom/build/1"] = Field(description="The shape, and the number of its format.")
    publish: str = Field(description="The folder of the student site.")
    editions: dict[str, str] = Field(description="The edition of each test, by the test's id.")


class ExportOutput(Output):
    """What `export --json` prints."""

    format: Literal["caseloom/export/1"] = Field(description="The shape, and the number of its format.")
    files: tuple[str, ...] = Field(description="The files that were written; of a site, its settings.")


class SchemaOutput(Output):
    """What `schema --json` prints."""

    format: Literal["caseloom/schema/1"] = Field(description="The shape, and the number of its format.")
    folder: str = Field(description="The folder that holds the schemas.")
    changed: tuple[str, ...] = Field(description="The files in it that changed.")


class FlagsOutput(Output):
    """What `explain COURSE flags --json` prints."""

    format: Literal["caseloom/flags/1"] = Field(description="The shape, and the number of its format.")
    open: int = Field(ge=0, description="How many cells are not proven.")
    flags: dict[str, dict[str, bool]] = Field(
        description="By rule and card: whether no client whom the rule stops has the card left."
    )


class ReviewEntry(Output):
    """One thing that a clinician is to go through."""

    part: str = Field(description="The part of the content it belongs to.")
    id: Named
    fingerprint: str = Field(description="The fingerprint that a signature names.")


class ReviewsOutput(Output):
    """What `explain COURSE reviews --json` prints."""

    format: Literal["caseloom/reviews/1"] = Field(description="The shape, and the number of its format.")
    remaining: int = Field(ge=0, description="How many are not yet signed.")
    entries: tuple[ReviewEntry, ...] = Field(description="All of them.")
