"""A film without a length is told where it is placed."""

from builder.check.checks import film_unreadable
from builder.model.film import FilmFile
from tests.check.filmed import FILM, told


def test_each_file_without_a_length_is_told() -> None:
    """The others are fine, and one that no lesson places is nobody's business."""
    broken = FilmFile("media/pad.mp4")
    assert told(film_unreadable) == []
    assert [one[1:3] for one in told(film_unreadable, files=(broken, FILM))] == [
        (3, "It cannot be told how long `media/pad.mp4` is.")
    ]
    assert told(film_unreadable, files=(broken,), lesson="A\n") == []
