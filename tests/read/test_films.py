"""The films among the files of `media/`."""

import shutil
from pathlib import Path

import pytest

from builder.flow.sample import SAMPLE
from builder.read.films import read_films

PAD = SAMPLE / "course" / "media" / "pad.webm"
TRACK = "WEBVTT\n\n00:00.000 --> 00:01.000\nA pad.\n"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A course folder with one film in two formats, its captions and its chapters."""
    (tmp_path / "media" / "more").mkdir(parents=True)
    for name in ("pad.webm", "pad.MP4", "more/other.webm"):
        shutil.copyfile(PAD, tmp_path / "media" / name)
    for name in ("pad.vtt", "pad.chapters.vtt"):
        (tmp_path / "media" / name).write_text(TRACK, encoding="utf-8")
    return tmp_path


def media(folder: Path) -> list[str]:
    """The files of its media folder."""
    return [one.relative_to(folder).as_posix() for one in (folder / "media").rglob("*") if one.is_file()]


def test_a_film_is_its_files_captions_and_chapters(folder: Path) -> None:
    """All that bears its name; a film in a folder below could not be placed."""
    read = read_films(folder, media(folder))
    assert read.films.keys() == {"pad"}
    pad = read.films["pad"]
    assert [one.file for one in pad.files] == ["media/pad.MP4", "media/pad.webm"]
    assert [track.file for track in pad.tracks] == ["media/pad.vtt", "media/pad.chapters.vtt"]
    assert read.found == ()
    assert read.places["media/pad.vtt"].lines[0] == "WEBVTT"


def test_a_film_may_have_neither(folder: Path) -> None:
    """What is missing is for the checks to say."""
    (folder / "media" / "pad.vtt").unlink()
    (folder / "media" / "pad.chapters.vtt").unlink()
    assert read_films(folder, media(folder)).films["pad"].tracks == ()


def test_bytes_that_are_no_text_are_placed(folder: Path) -> None:
    """In captions as in any other file; the rest of them is read."""
    (folder / "media" / "pad.vtt").write_bytes(TRACK.replace("pad", "caf\xe9").encode("latin-1"))
    (folder / "media" / "pad.chapters.vtt").write_bytes(TRACK.encode("utf-16"))
    read = read_films(folder, media(folder))
    assert [(one.check, one.place.file, one.place.line) for one in read.found] == [
        ("not_utf8", "media/pad.chapters.vtt", 1),
        ("not_utf8", "media/pad.vtt", 4),
    ]
    captions = read.films["pad"].captions
    assert captions is not None
    assert len(captions.cues) == 1


def test_windows_line_ends_are_line_ends(folder: Path) -> None:
    """CRLF and a byte-order mark, as an editor there saves them."""
    (folder / "media" / "pad.vtt").write_bytes(TRACK.replace("\n", "\r\n").encode("utf-8-sig"))
    read = read_films(folder, media(folder))
    assert read.found == ()
    assert [one.text for track in read.films["pad"].tracks for one in track.cues] == ["A pad."] * 2


def test_captions_that_cannot_be_read_are_told(folder: Path) -> None:
    """As a file that is far too large."""
    (folder / "media" / "pad.vtt").write_bytes(b"x" * 1_000_002)
    assert [one.check for one in read_films(folder, media(folder)).found] == ["file_unreadable"]
