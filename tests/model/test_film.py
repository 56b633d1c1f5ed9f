"""Films: their length over several files, their title, and times as they read."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.model.film import Film, FilmFile, Track, captions_of, chapters_of, clock, stamp
from builder.read.vtt import read_track


def test_a_film_is_as_long_as_its_shortest_file() -> None:
    """A caption must fall within each; one whose length is unknown makes the whole unknown."""
    long, short = FilmFile("media/a.mp4", 9000), FilmFile("media/a.webm", 8000)
    assert Film("a", (long, short)).length == 8000
    assert Film("a", (long, FilmFile("media/a.webm"))).length == 0
    assert Film("a", ()).length == 0


def test_a_film_is_called_by_its_captions_or_by_its_file() -> None:
    """The first line of the captions may give a title."""
    assert Film("two_strokes", ()).title == "Two strokes"
    assert Film("two_strokes", (), Track("media/two_strokes.vtt")).title == "Two strokes"
    assert Film("two_strokes", (), Track("media/two_strokes.vtt", title="Two of them")).title == "Two of them"


def test_captions_and_chapters_stand_beside_the_film() -> None:
    """By its name, in the same folder; only those that there are count."""
    assert (captions_of("a"), chapters_of("a")) == ("media/a.vtt", "media/a.chapters.vtt")
    track = Track("media/a.vtt")
    assert Film("a", (), track).tracks == (track,)
    assert Film("a", (), track, track).tracks == (track, track)


@pytest.mark.parametrize(
    ("length", "read"), [(0, "0:00"), (4999, "0:04"), (750_000, "12:30"), (3_723_000, "1:02:03")]
)
def test_a_time_reads_as_on_a_player(length: int, read: str) -> None:
    """Minutes and seconds; hours only where there are some."""
    assert clock(length) == read


@given(st.integers(0, 99 * 3_600_000), st.integers(1, 3_600_000))
def test_a_stamp_is_read_back_as_it_was(start: int, more: int) -> None:
    """What is written for a time is the time that is read."""
    track, found = read_track(f"WEBVTT\n\n{stamp(start)} --> {stamp(start + more)}\nA\n", "media/a.vtt")
    assert [(one.start, one.end) for one in track.cues] == [(start, start + more)]
    assert found == ()
