"""A film that a lesson places has chapters."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.films import LESSON, at_tag, placed_films
from builder.diagnostic import Level
from builder.model.film import chapters_of
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = "Chapters lead straight to the stroke or the wrap that somebody wants to see again."
BAD = Example(LESSON.file, LESSON.text, more=(Example("media/pad.chapters.vtt"),))
GOOD = LESSON


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every placed film without a file of chapters, or with an empty one."""
    for file, tag, film in placed_films(evidence.course):
        if film is not None and not (film.chapters and film.chapters.cues):
            name = chapters_of(film.name)
            message = f"`{name}` holds no chapter." if film.chapters else f"There are no chapters `{name}`."
            remedy = (
                "Write WebVTT as for captions, with the title of a chapter below its times. A short film may "
                "be one chapter."
            )
            yield at_tag(file, tag, message, remedy)
