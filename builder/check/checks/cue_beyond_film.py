"""No caption or chapter lasts longer than its film."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.films import at_cue, cues
from builder.diagnostic import Level
from builder.model.film import stamp
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = "What comes after the end is never shown. Often the film was cut, or the captions are those of another."
BAD = Example("media/pad.vtt", "WEBVTT\n\n00:01.000 --> 00:59.000\nA pad, cut to size.\n")
GOOD = Example("media/pad.vtt", "WEBVTT\n\n00:01.000 --> 00:02.000\nA pad, cut to size.\n")


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every cue that ends after its film."""
    for film, track, cue in cues(evidence):
        if film.length and cue.end > film.length:
            message = f"It lasts until {stamp(cue.end)}, but the film ends at {stamp(film.length)}."
            remedy = (
                f"End it at {stamp(film.length)} at the latest, and see whether these times are of this film."
            )
            yield at_cue(track, cue, message, remedy)
