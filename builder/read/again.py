"""Reads files again and again for a command that stays open: a file with the same bytes is known already."""

from __future__ import annotations

from pathlib import Path

from builder.disk import read_bytes
from builder.doors.text import LIMIT
from builder.fault import Fault
from builder.model.noun import Noun
from builder.read.written import Entry, as_entry, as_written, read_entry


class Rereader:
    """Knows every file it has read by its name and bytes, and gives for them what it gave before."""

    def __init__(self) -> None:
        self._known: dict[tuple[type[Noun], str], tuple[bytes, Entry]] = {}

    def __call__(self, model: type[Noun], path: Path, file: str) -> Entry:
        """One YAML file and what it is, as `read_entry` reads it."""
        try:
            data = read_bytes(path, LIMIT + 1)
        except Fault:
            return read_entry(model, path, file)
        known = self._known.get((model, file))
        if known is None or known[0] != data:
            known = data, as_entry(model, as_written(data, file))
            self._known[(model, file)] = known
        return known[1]
