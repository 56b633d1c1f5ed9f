"""A caption or chapter says something."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.films import at_cue, cues
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = "Where there are times and no words, words were forgotten or an empty line parts them from their times."
BAD = Example("media/pad.vtt", "WEBVTT\n\n00:01.000 --> 00:02.000\n")
GOOD = Example("media/pad.vtt", "WEBVTT\n\n00:01.000 --> 00:02.000\nA pad, cut to size.\n")


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every cue without words."""
    for _, track, cue in cues(evidence):
        if not cue.text:
            remedy = "Write them on the next line, with no empty line between, or remove the times."
            yield at_cue(track, cue, "No words stand below these times.", remedy)
