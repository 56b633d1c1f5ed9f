"""The shipped content as its own tests need it: read file by file, without the reading stage."""

from functools import cache
from pathlib import Path
from typing import TypeVar

from builder.disk import shipped
from builder.doors.yaml import read_yaml
from builder.judge.judge import Judge
from builder.model.board import BoardRules
from builder.model.card import Card
from builder.model.fact import FactBook, ScreeningBook
from builder.model.library import Content
from builder.model.noun import Noun
from builder.model.rule import Rule
from builder.model.tables import PhaseBook, ReferenceBook, SeverityBook
from builder.read.words import read_words

N = TypeVar("N", bound=Noun)
FOLDER = shipped("content")


def noun(path: Path, model: type[N]) -> N:
    """One file as the noun it should make; fails on anything the reader finds."""
    parsed = read_yaml(path.read_bytes(), path.name)
    if parsed.found:
        raise ValueError(f"{path.name}: {parsed.found}")
    return model.model_validate(parsed.value)


def shelf(name: str, model: type[N]) -> dict[str, N]:
    """All files of one folder, by file stem."""
    return {path.stem: noun(path, model) for path in sorted((FOLDER / name).glob("*.yml"))}


@cache
def content() -> Content:
    """The whole of the shipped content."""
    return Content(
        facts=noun(FOLDER / "facts.yml", FactBook),
        screening=noun(FOLDER / "screening.yml", ScreeningBook),
        phases=noun(FOLDER / "phases.yml", PhaseBook),
        severity=noun(FOLDER / "severity.yml", SeverityBook),
        references=noun(FOLDER / "references.yml", ReferenceBook),
        cards=shelf("cards", Card),
        rules=shelf("rules", Rule),
        boards=shelf("boards", BoardRules),
        words=read_words(FOLDER).texts or {},
    )


@cache
def judge() -> Judge:
    """A judge of the shipped content."""
    return Judge(content())
