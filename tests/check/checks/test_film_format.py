"""A film plays in every browser, in one of its files at least."""

import pytest

from builder.check.checks import film_format
from builder.model.film import FilmFile
from tests.check.filmed import FILM, told

PHONE = FilmFile("media/pad.mp4", 4000, "HEVC", 64, 36)


@pytest.mark.parametrize(
    "files",
    [
        (FILM,),
        (FilmFile("media/pad.MP4", 4000, "AVC"),),
        (FilmFile("media/pad.webm", 4000, "VP8"),),
        (PHONE, FILM),
        (FilmFile("media/pad.mp4"),),
    ],
)
def test_what_plays_is_fine(files: tuple[FilmFile, ...]) -> None:
    """The usual formats, one beside another, and what cannot be read is told elsewhere."""
    assert told(film_format, files=files) == []


def test_what_does_not_play_is_named() -> None:
    """By its format, or for want of a picture."""
    assert [one[2] for one in told(film_format, files=(PHONE,))] == ["`media/pad.mp4` is in the format HEVC."]
    sound = FilmFile("media/pad.mp4", 4000)
    assert [one[2] for one in told(film_format, files=(sound,))] == ["`media/pad.mp4` is without a picture."]
