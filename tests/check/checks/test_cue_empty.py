"""A cue has words."""

from builder.check.checks import cue_empty
from tests.check.filmed import told, track


def test_times_without_words_are_told() -> None:
    """Spaces and marks are no words."""
    spans = ("00:00.000 --> 00:01.000\n", "00:01.000 --> 00:02.000\n<i> </i>", "00:02.000 --> 00:03.000")
    assert [one[1] for one in told(cue_empty, captions=track(*spans))] == [3, 6]
