"""Writes the certificate list and the refusals as sheets."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path

from builder.certify.rows import CERTIFICATE_COLUMNS, REFUSED_COLUMNS
from builder.disk import write_bytes
from builder.doors.sheet import write_sheet
from builder.model.outcome import Issued


def write_lists(issued: Issued, out: Path) -> tuple[Path, ...]:
    """Write `certificates.csv` and `refused.csv` into the folder `out`, and say where."""
    return (
        _write(out / "certificates.csv", CERTIFICATE_COLUMNS, issued.certificates),
        _write(out / "refused.csv", REFUSED_COLUMNS, issued.refused),
    )


def _write(path: Path, columns: Sequence[str], rows: Iterable[Mapping[str, str]]) -> Path:
    write_bytes(path, write_sheet(columns, [[row[column] for column in columns] for row in rows]))
    return path
