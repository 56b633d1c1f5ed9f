"""A cue lies within its film."""

import pytest

from builder.check.checks import cue_beyond_film
from builder.model.film import FilmFile
from tests.check.filmed import FILM, told, track


@pytest.mark.parametrize(
    ("end", "remedy"), [("00:04.000", None), ("00:04.001", "End it at 00:00:04.000 at the latest")]
)
def test_a_cue_that_lasts_longer_than_the_film_is_told(end: str, remedy: str | None) -> None:
    """To the thousandth of a second, with the last time that it may have."""
    found = told(cue_beyond_film, captions=track(f"00:03.000 --> {end}"))
    assert len(found) == (1 if remedy else 0)
    assert all(one[3].startswith(remedy or "") for one in found)


def test_the_shortest_file_counts() -> None:
    """A film whose length is not known ends nowhere."""
    captions = track("00:03.000 --> 00:04.000")
    short = FilmFile("media/pad.mp4", 3500, "AVC")
    assert len(told(cue_beyond_film, files=(FILM, short), captions=captions)) == 1
    assert told(cue_beyond_film, files=(FilmFile("media/pad.mp4"),), captions=captions) == []
