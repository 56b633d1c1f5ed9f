"""A film that is shown has captions."""

from builder.check.checks import captions_missing
from builder.model.film import Track
from tests.check.filmed import told, track

CUE = track("00:01.000 --> 00:02.000")


def test_captions_with_a_cue_are_fine() -> None:
    """And of a film that no lesson places none are asked."""
    assert told(captions_missing, captions=CUE) == []
    assert told(captions_missing, lesson="A\n") == []


def test_without_any_it_is_told_at_the_tag() -> None:
    """No file, and a file with nothing in it; chapters are no captions."""
    assert [one[:3] for one in told(captions_missing, chapters=CUE)] == [
        ("lessons/cold.md", 3, "There are no captions `media/pad.vtt`.")
    ]
    empty = Track("media/pad.vtt")
    assert [one[2] for one in told(captions_missing, captions=empty)] == ["`media/pad.vtt` holds no caption."]
