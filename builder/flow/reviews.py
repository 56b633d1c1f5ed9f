"""The list of what a clinician is to review, printed or written as a sheet to sign."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from builder.disk import write_text
from builder.fault import Fault
from builder.flow.opened import Opened
from builder.render.maker import maker
from builder.render.review_list import in_text, listed, remaining
from builder.render.review_sheet import as_sheet


def review_list(opened: Opened) -> tuple[list[str], dict[str, Any]]:
    """The list in words, and as data."""
    if opened.course is None:
        raise Fault("The course cannot be put together.", "Run check and mend what it names.")
    made = maker(opened.course)
    entries = listed(made)
    data = [{"part": one.part, "id": one.id, "fingerprint": one.fingerprint} for one in entries]
    return list(in_text(made, entries)), {
        "format": "caseloom/reviews/1",
        "remaining": remaining(entries),
        "entries": data,
    }


def write_review_sheet(opened: Opened, path: Path) -> str:
    """Write the sheet to sign; the line that says so."""
    if opened.course is None:
        raise Fault("The course cannot be put together.", "Run check and mend what it names.")
    made = maker(opened.course)
    entries = listed(made)
    write_text(path, as_sheet(made, entries))
    return f"Wrote {path}: {len(entries)} to go through, {remaining(entries)} not yet signed."
