"""Cues follow each other."""

import pytest

from builder.check.checks import cue_overlap
from tests.check.filmed import told, track


@pytest.mark.parametrize(
    ("second", "lines"),
    [
        ("00:02.000 --> 00:03.000", []),
        ("00:01.999 --> 00:03.000", [6]),
        ("00:00.000 --> 00:00.500", [6]),
    ],
)
def test_a_cue_that_begins_before_the_last_has_ended_is_told(second: str, lines: list[int]) -> None:
    """Touching is fine; out of order is not."""
    captions = track("00:01.000 --> 00:02.000", second)
    assert [one[1] for one in told(cue_overlap, captions=captions)] == lines


def test_captions_and_chapters_do_not_hinder_each_other() -> None:
    """They are shown in different places."""
    span = "00:01.000 --> 00:02.000"
    assert told(cue_overlap, captions=track(span), chapters=track(span)) == []
