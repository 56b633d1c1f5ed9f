"""The door to film files: how long one runs, and in what format its picture is."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from pymediainfo import MediaInfo

from builder.fault import Fault
from builder.model.film import FilmFile

KNOWN = 1000  # films whose lengths are remembered while a command runs


def measured(path: Path, file: str) -> FilmFile:
    """A film file, shown under the name `file`; without length or format where they cannot be read."""
    try:
        about = path.stat()
        found = _measured(path, about.st_size, about.st_mtime_ns)
    except OSError:
        found = FilmFile("")
    return FilmFile(file, found.length, found.picture, found.width, found.height)


@lru_cache(KNOWN)
def _measured(path: Path, _size: int, _changed: int) -> FilmFile:
    with path.open("rb") as opened:  # an open file, since a name may not suit the locale
        try:
            read = MediaInfo.parse(opened)
        except (OSError, RuntimeError) as error:
            raise Fault("The reader of film files does not work here.", "Install caseloom again.") from error
    if isinstance(read, str):
        return FilmFile("")
    played = (*read.video_tracks, *read.audio_tracks)
    length = _whole(next((one.duration for one in read.general_tracks if played), 0))
    picture = next(iter(read.video_tracks), None)
    if picture is None:
        return FilmFile("", length)
    return FilmFile("", length, picture.format or "", _whole(picture.width), _whole(picture.height))


def _whole(value: object) -> int:
    """A number as an integer; 0 for none."""
    return int(float(value)) if isinstance(value, int | float | str) else 0
