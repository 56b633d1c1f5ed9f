"""What the answers of a class say about a test: counts always, figures where there are sitters enough."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from builder.model.noun import Noun


class Figure(Noun):
    """One statistic with its limits, or the reason why there is none; `note` says how far to trust it."""

    value: float | None = Field(description="The figure; null where there is none.")
    low: float | None = Field(default=None, description="The lower limit of its interval.")
    high: float | None = Field(default=None, description="The upper limit of its interval.")
    note: str = Field(default="", description="Why there is none, or how far to trust it.")


class OptionCount(Noun):
    """How many chose one option, put one step or left side rightly, or typed one number."""

    option: str = Field(description="Its id in the paper, or the number as typed.")
    title: str = Field(description="What it is, in words.")
    right: bool = Field(description="Whether it is right.")
    count: int = Field(description="How many of them.")


class QuestionFigures(Noun):
    """What the answers say about one question."""

    question: str = Field(description="The question's id in the paper.")
    stem: str = Field(description="The question as it was asked.")
    n: int = Field(description="How many sat it.")
    unanswered: int = Field(description="How many of them left it open.")
    options: tuple[OptionCount, ...] = Field(description="Each option, step, left side or number typed.")
    difficulty: Figure = Field(description="The mean mark.")
    discrimination: Figure = Field(description="How it goes with the marks of the other questions.")


class VersionFigures(Noun):
    """One version of a test, by its first-time sitters; `coefficient` names the reliability."""

    test: str = Field(description="The test's id.")
    version: str = Field(description="The version.")
    edition: str = Field(description="The edition of the test.")
    n: int = Field(description="How many sat it for the first time.")
    questions: tuple[QuestionFigures, ...] = Field(description="Each question, in the order of the paper.")
    coefficient: Literal["KR-20", "alpha"] = Field(description="Which reliability is given.")
    reliability: Figure = Field(description="The reliability of the version.")
    waiting: int = Field(
        default=0, description="First tries left out because a written answer of theirs is not marked yet."
    )


class Analysis(Noun):
    """All versions that were sat in a class."""

    format: Literal["caseloom/analysis/1"] = Field(
        default="caseloom/analysis/1", description="The shape, and the number of its format."
    )
    klass: str = Field(description="The class.")
    versions: tuple[VersionFigures, ...] = Field(description="Each version that was sat.")
