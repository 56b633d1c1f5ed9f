"""The words of the interface: a flat file from id to text."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from builder.diagnostic import Diagnostic
from builder.doors.shape import pour_words
from builder.model.noun import Noun
from builder.place import Places
from builder.read.misfit import in_plain_words
from builder.read.written import read_written


@dataclass(frozen=True)
class Words:
    """The texts by id; None where the file does not hold them."""

    texts: dict[str, str] | None
    found: tuple[Diagnostic, ...]
    places: Places


def read_words(path: Path, file: str) -> Words:
    """The texts of one file; its `format` is no text and is left out."""
    written = read_written(path, file)
    data = written.value
    if not written.whole:
        return Words(None, written.found, written.places)
    texts = {key: text for key, text in data.items() if key != "format"} if isinstance(data, dict) else data
    poured, misfits = pour_words(texts)
    faults = tuple(in_plain_words(Noun, misfits, written.places))
    return Words(None if faults else poured, (*written.found, *faults), written.places)
