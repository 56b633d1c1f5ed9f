"""A cue ends after it begins."""

import pytest

from builder.check.checks import cue_reversed
from tests.check.filmed import told, track


@pytest.mark.parametrize(
    ("span", "found"),
    [
        ("00:01.000 --> 00:01.001", []),
        ("00:01.000 --> 00:01.000", [("media/pad.vtt", 3)]),
        ("00:02.000 --> 00:01.999", [("media/pad.vtt", 3)]),
    ],
)
def test_a_cue_of_no_length_or_less_is_told(span: str, found: list[tuple[str, int]]) -> None:
    """At the line of its times."""
    assert [one[:2] for one in told(cue_reversed, captions=track(span))] == found


def test_chapters_are_looked_at_too() -> None:
    """Under their own name."""
    chapters = track("00:02.000 --> 00:01.000", file="media/pad.chapters.vtt")
    assert [one[0] for one in told(cue_reversed, chapters=chapters)] == ["media/pad.chapters.vtt"]
