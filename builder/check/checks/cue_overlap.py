"""No caption or chapter begins before the one above it has ended."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from builder.check.evidence import Evidence, Finding
from builder.check.films import at_cue, tracks
from builder.diagnostic import Level
from builder.model.film import stamp
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = "Two captions at once hide the picture and jump about, and of two chapters none is the present one."
_TWO = "WEBVTT\n\n00:00.000 --> 00:0{end}\nA pad, cut to size.\n\n00:01.500 --> 00:03.000\nThe wrap.\n"
BAD = Example("media/pad.vtt", _TWO.format(end="2.000"))
GOOD = Example("media/pad.vtt", _TWO.format(end="1.500"))


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every cue that begins too early."""
    for _, track in tracks(evidence):
        for above, cue in pairwise(track.cues):
            if cue.start < above.end:
                until = f"line {above.line} lasts until {stamp(above.end)}"
                remedy = "End the one above earlier, or write both in one; keep them in the order of time."
                yield at_cue(track, cue, f"It begins at {stamp(cue.start)}, though {until}.", remedy)
