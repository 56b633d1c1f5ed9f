"""A caption or chapter ends after it begins."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.films import at_cue, cues
from builder.diagnostic import Level
from builder.model.film import stamp
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = "A caption that ends before it begins is never shown."
BAD = Example("media/pad.vtt", "WEBVTT\n\n00:02.000 --> 00:01.000\nA pad, cut to size.\n")
GOOD = Example("media/pad.vtt", "WEBVTT\n\n00:01.000 --> 00:02.000\nA pad, cut to size.\n")


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every cue of no length, or of less."""
    for _, track, cue in cues(evidence):
        if cue.end <= cue.start:
            message = f"It begins at {stamp(cue.start)} and ends at {stamp(cue.end)}."
            yield at_cue(
                track, cue, message, "Write the earlier time first, and the later one after the arrow."
            )
