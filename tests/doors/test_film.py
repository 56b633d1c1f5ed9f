"""Film files: how long they run, and in what format."""

from pathlib import Path

import pytest

from builder.doors import film
from builder.doors.film import measured
from builder.fault import Fault
from builder.flow.sample import SAMPLE
from builder.model.film import FilmFile

MEDIA = SAMPLE / "course" / "media"


def test_length_and_format_are_read_from_the_file() -> None:
    """Both kinds of container, in thousandths of a second."""
    assert measured(MEDIA / "pad.webm", "media/pad.webm") == FilmFile("media/pad.webm", 4000, "VP9", 64, 36)
    phone = measured(MEDIA / "from_a_phone.mp4", "media/from_a_phone.mp4")
    assert phone == FilmFile("media/from_a_phone.mp4", 4000, "MPEG-4 Visual", 64, 36)


def test_a_name_of_any_letters_is_opened(tmp_path: Path) -> None:
    """Spaces and accents make no difference."""
    path = tmp_path / "Übung mit Zoë.webm"
    path.write_bytes((MEDIA / "pad.webm").read_bytes())
    assert measured(path, "a").length == 4000


@pytest.mark.parametrize(
    "data", [b"", b"This is no film.\n", b"\x00" * 4096, b"WEBVTT\n\n00:01.000 --> 00:02.000\n"]
)
def test_what_is_no_film_has_no_length(data: bytes, tmp_path: Path) -> None:
    """Captions under a film's name are none either, though they have times."""
    (tmp_path / "a.webm").write_bytes(data)
    assert measured(tmp_path / "a.webm", "a") == FilmFile("a")


def test_a_film_that_says_no_length_has_none(tmp_path: Path) -> None:
    """Some recorders leave it out; the picture is known all the same."""
    silent = (MEDIA / "pad.webm").read_bytes()
    for said in (b"\x44\x89", b"DURATION"):
        assert silent.count(said) == 1
        silent = silent.replace(said, said[:-1] + b"\x58")
    (tmp_path / "a.webm").write_bytes(silent)
    assert measured(tmp_path / "a.webm", "a") == FilmFile("a", 0, "VP9", 64, 36)


def test_a_film_that_was_cut_is_measured_again(tmp_path: Path) -> None:
    """What was known of a file counts only as long as it has not changed; one that is gone has no length."""
    path = tmp_path / "a.webm"
    path.write_bytes((MEDIA / "pad.webm").read_bytes())
    assert measured(path, "a").length == 4000
    path.write_bytes(b"no film")
    assert measured(path, "a").length == 0
    path.unlink()
    assert measured(path, "a").length == 0


def test_a_reader_that_does_not_work_is_said(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Without the library no length is made up."""

    class Broken:
        @staticmethod
        def parse(_file: object) -> None:
            raise OSError("not on this system")

    monkeypatch.setattr(film, "MediaInfo", Broken)
    (tmp_path / "b.webm").write_bytes(b"x")
    with pytest.raises(Fault, match="does not work"):
        measured(tmp_path / "b.webm", "b")
