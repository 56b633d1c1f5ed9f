"""What the answers of a class say about a test: counts always, figures where there are sitters enough."""

from __future__ import annotations

from typing import Literal

from builder.model.noun import Noun


class Figure(Noun):
    """One statistic with its limits, or the reason why there is none; `note` says how far to trust it."""

    value: float | None
    low: float | None = None
    high: float | None = None
    note: str = ""


class OptionCount(Noun):
    """How many chose one option."""

    option: str
    title: str
    right: bool
    count: int


class QuestionFigures(Noun):
    """What the answers say about one question."""

    question: str
    stem: str
    n: int
    unanswered: int
    options: tuple[OptionCount, ...]
    difficulty: Figure
    discrimination: Figure


class VersionFigures(Noun):
    """One version of a test, by its first-time sitters; `coefficient` names the reliability."""

    test: str
    version: str
    edition: str
    n: int
    questions: tuple[QuestionFigures, ...]
    coefficient: Literal["KR-20", "alpha"]
    reliability: Figure


class Analysis(Noun):
    """All versions that were sat in a class."""

    format: Literal["caseloom/analysis/1"] = "caseloom/analysis/1"
    klass: str
    versions: tuple[VersionFigures, ...]
