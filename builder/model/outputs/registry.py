"""Every shape of output by the name in its format, with what it is called."""

from __future__ import annotations

from typing import NamedTuple

from pydantic import BaseModel

from builder.model.analysis import Analysis
from builder.model.answers import AnswerSheet
from builder.model.outputs.check import CheckOutput
from builder.model.outputs.explain import ExplainOutput
from builder.model.outputs.host import HostOutput
from builder.model.outputs.made import BuildOutput, ExportOutput, FlagsOutput, ReviewsOutput, SchemaOutput


class Shape(NamedTuple):
    """One shape: its model and what it is called."""

    model: type[BaseModel]
    title: str


OUTPUTS: dict[str, Shape] = {
    "analysis": Shape(Analysis, "What the answers of a class say"),
    "answers": Shape(AnswerSheet, "An answer sheet"),
    "build": Shape(BuildOutput, "What a build wrote"),
    "check": Shape(CheckOutput, "What is to fix in a course"),
    "explain": Shape(ExplainOutput, "Something explained"),
    "export": Shape(ExportOutput, "What was taken out of a course"),
    "flags": Shape(FlagsOutput, "Which rule stops which card"),
    "host": Shape(HostOutput, "What the host says"),
    "reviews": Shape(ReviewsOutput, "What is to be reviewed"),
    "schema": Shape(SchemaOutput, "Which schemas were written"),
}
