"""A film is in a format that every browser plays."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import PurePosixPath

from builder.check.evidence import Evidence, Finding
from builder.check.films import LESSON, at_tag, placed_films
from builder.diagnostic import Level
from builder.model.film import PLAYABLE, FilmFile
from builder.model.kind import Example

LEVEL: Level = "warning"
WHY = "Many phones record in formats that some browsers show as a black picture, or not at all."
BAD = Example("lessons/cold.md", "# Cold\n\n[card cold_pack]\n\n[film from_a_phone]\n")
GOOD = LESSON


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every placed film whose picture is in no such format, in none of its files."""
    for file, tag, film in placed_films(evidence.course):
        odd = [one for one in film.files if one.length and one.picture not in _plays(one)] if film else []
        if film and odd and len(odd) == len(film.files):
            one = odd[0]
            named = f"in the format {one.picture}" if one.picture else "without a picture"
            message = f"`{one.file}` is {named}."
            yield at_tag(file, tag, message, "Save it as MP4 with H.264 (AVC), or as WebM with VP9.")


def _plays(one: FilmFile) -> tuple[str, ...]:
    return PLAYABLE[PurePosixPath(one.file).suffix.lower()]
