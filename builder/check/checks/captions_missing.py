"""A film that a lesson places has captions."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.films import LESSON, at_tag, placed_films
from builder.diagnostic import Level
from builder.model.film import captions_of
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = (
    "Who cannot hear the film, or sits where it must be silent, reads the captions. They are its transcript "
    "too, for whoever cannot see it and for paper."
)
BAD = Example(LESSON.file, LESSON.text, more=(Example("media/pad.vtt"),))
GOOD = LESSON


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every placed film without a file of captions, or with an empty one."""
    for file, tag, film in placed_films(evidence.course):
        if film is not None and not (film.captions and film.captions.cues):
            name = captions_of(film.name)
            message = f"`{name}` holds no caption." if film.captions else f"There are no captions `{name}`."
            remedy = (
                "Write WebVTT: `WEBVTT`, an empty line, then `00:00:01.000 --> 00:00:04.000` and below it "
                "what is said or shown in these seconds."
            )
            yield at_tag(file, tag, message, remedy)
