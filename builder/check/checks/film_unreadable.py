"""A film that a lesson places can be read, and says how long it is."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.films import LESSON, at_tag, placed_films
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = "Without a length the study time cannot be told, and most players cannot jump in the film."
_TRACK = "WEBVTT\n\n00:00.000 --> 00:01.000\nA pad.\n"
BAD = Example(
    "lessons/cold.md",
    "# Cold\n\n[card cold_pack]\n\n[film wrap]\n",
    more=(
        Example("media/wrap.webm", "This is no film.\n"),
        Example("media/wrap.vtt", _TRACK),
        Example("media/wrap.chapters.vtt", _TRACK),
    ),
)
GOOD = LESSON


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every placed film without a length."""
    for file, tag, film in placed_films(evidence.course):
        for one in film.files if film else ():
            if not one.length:
                message = f"It cannot be told how long `{one.file}` is."
                yield at_tag(
                    file, tag, message, "Open it in a program for films and save it again, as MP4 or WebM."
                )
