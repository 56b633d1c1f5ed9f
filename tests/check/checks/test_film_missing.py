"""A lesson places only films that there are."""

import pytest

from builder.check.checks import film_missing
from tests.check.filmed import told


def test_a_film_that_is_there_is_fine() -> None:
    """Nothing is said of it, nor of one in a note."""
    assert told(film_missing) == []
    assert told(film_missing, lesson="<!--\n[film wrap]\n-->\n") == []


@pytest.mark.parametrize(
    ("media", "remedy"),
    [
        ((), "Put the film into `media/` as `wrap.mp4` or `wrap.webm`."),
        (("media/wrap.vtt", "media/other.mp4"), "Put the film into `media/` as"),
        (("media/Wrap.MP4",), "Move `media/Wrap.MP4` to `media/wrap.mp4`."),
        (("media/day one/wrap.webm",), "Move `media/day one/wrap.webm` to `media/wrap.webm`."),
        (
            ("media/wrap.mov",),
            "`media/wrap.mov` does not play in every browser: save it as `media/wrap.mp4`.",
        ),
    ],
)
def test_the_remedy_names_the_file_that_was_meant(media: tuple[str, ...], remedy: str) -> None:
    """One with the same name elsewhere, in capitals or in another format."""
    ((file, line, message, said),) = told(film_missing, files=(), lesson="A\n\n[film wrap]\n", media=media)
    assert (file, line, message) == ("lessons/cold.md", 3, "There is no film `wrap` in `media/`.")
    assert said.startswith(remedy)


def test_a_name_nearby_is_suggested() -> None:
    """A slip of the finger is not a new film."""
    assert [one[3] for one in told(film_missing, lesson="[film pda]\n")] == ["Did you mean `[film pad]`?"]
