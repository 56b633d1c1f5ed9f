"""Writes the analysis as text to read and as data."""

from __future__ import annotations

from collections.abc import Container, Iterator
from pathlib import Path

from builder.disk import write_text
from builder.model.analysis import Analysis, Figure, OptionCount, QuestionFigures, VersionFigures

RULES = (
    "Each participant's first try alone; a question left open counts as not right.",
    "Most should answer most questions of a course rightly: a high share is success, not a fault.",
)


def lines(analysis: Analysis) -> list[str]:
    """The report in plain text, line by line."""
    head = f"Class {analysis.klass}: what the answers say"
    if not analysis.versions:
        return [head, "Nothing was graded yet."]
    return [head, *RULES, *(line for version in analysis.versions for line in _version(version))]


def write_report(analysis: Analysis, out: Path) -> tuple[Path, ...]:
    """Write `analysis.json` and `analysis.txt` into the folder `out`, and say where."""
    data, text = out / "analysis.json", out / "analysis.txt"
    write_text(data, analysis.model_dump_json(indent=2) + "\n")
    write_text(text, "\n".join(lines(analysis)) + "\n")
    return (data, text)


def _version(version: VersionFigures) -> Iterator[str]:
    yield ""
    yield f"{version.test}, version {version.version}, edition {version.edition}: {version.n} in all"
    if version.waiting:
        yield f"  left out, because a written answer is not marked yet: {version.waiting}"
    yield f"  {version.coefficient}: {_figure(version.reliability)}"
    missing = _missing_everywhere(version)
    yield from (f"  {name} of each question: {note}" for name, note in missing.items())
    for number, question in enumerate(version.questions, start=1):
        yield from _question(number, question, missing)


def _figures(question: QuestionFigures) -> dict[str, Figure]:
    return {"difficulty": question.difficulty, "discrimination": question.discrimination}


def _missing_everywhere(version: VersionFigures) -> dict[str, str]:
    """The figures that no question has, all for one reason, which is then said once."""
    missing = {}
    for name in ("difficulty", "discrimination"):
        figures = [_figures(question)[name] for question in version.questions]
        if all(figure.value is None and figure.note == figures[0].note for figure in figures):
            missing[name] = figures[0].note
    return missing


def _question(number: int, question: QuestionFigures, missing: Container[str]) -> Iterator[str]:
    yield f"  {number}. {question.question} {question.stem}".rstrip()
    yield from (f"     {_option(option)}" for option in question.options)
    if question.unanswered:
        yield f"     {question.unanswered:>4}  left open"
    yield from (
        f"     {name}: {_figure(figure)}"
        for name, figure in _figures(question).items()
        if name not in missing
    )


def _option(option: OptionCount) -> str:
    return (
        f"{option.count:>4}  {'right' if option.right else '     '}  {option.option} {option.title}".rstrip()
    )


def _figure(figure: Figure) -> str:
    if figure.value is None:
        return figure.note
    limits = "" if figure.low is None else f" ({figure.low:.2f} to {figure.high:.2f})"
    return f"{figure.value:.2f}{limits} {figure.note}".rstrip()
