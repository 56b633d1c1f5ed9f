"""What every JSON output is: plain fields, each described; a reader passes over the ones it does not know."""

from __future__ import annotations

from typing import Annotated

from pydantic import BaseModel, ConfigDict, Field

Named = Annotated[str, Field(description="A short name, as it stands in a file.")]
RuleIds = Annotated[
    tuple[str, ...], Field(description="What it rests on: rules, cells of cards, clocks, signs or tables.")
]
Plain = str | int | float


class Output(BaseModel):
    """One block of an output."""

    model_config = ConfigDict(frozen=True)
