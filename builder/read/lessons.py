"""Lessons: Markdown as text, with every byte that is no text placed."""

from __future__ import annotations

from pathlib import Path

from builder.diagnostic import Diagnostic
from builder.disk import read_bytes
from builder.doors.text import LIMIT, decode
from builder.fault import Fault
from builder.place import Place, Places
from builder.read.written import Written


def read_lesson(path: Path, file: str) -> Written:
    """One lesson; `value` is its text, empty where it could not be read."""
    place = Place(file)
    try:
        decoded = decode(read_bytes(path, LIMIT + 1), file)
    except Fault as fault:
        found = Diagnostic("file_unreadable", "error", place, fault.message, fault.remedy)
        return Written(file, "", Places(place), (found,), whole=False)
    return Written(file, decoded.text or "", Places(place, lines=decoded.lines), decoded.found, whole=True)
