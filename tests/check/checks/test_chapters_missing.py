"""A film that is shown has chapters."""

from builder.check.checks import chapters_missing
from builder.model.film import Track
from tests.check.filmed import told, track

CUE = track("00:01.000 --> 00:02.000")


def test_chapters_with_a_cue_are_fine() -> None:
    """One is enough; of a film that no lesson places none are asked."""
    assert told(chapters_missing, chapters=CUE) == []
    assert told(chapters_missing, lesson="A\n") == []


def test_without_any_it_is_told_at_the_tag() -> None:
    """No file, and a file with nothing in it."""
    assert [one[:3] for one in told(chapters_missing, captions=CUE)] == [
        ("lessons/cold.md", 3, "There are no chapters `media/pad.chapters.vtt`.")
    ]
    empty = Track("media/pad.chapters.vtt")
    assert [one[2] for one in told(chapters_missing, chapters=empty)] == [
        "`media/pad.chapters.vtt` holds no chapter."
    ]
