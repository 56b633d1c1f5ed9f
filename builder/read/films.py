"""The films of a course: which files in `media/` make one, how long it is, and its captions and chapters."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from builder.diagnostic import Diagnostic
from builder.disk import read_bytes
from builder.doors.film import measured
from builder.doors.text import LIMIT, decode
from builder.fault import Fault
from builder.model.film import ENDINGS, Film, Track, captions_of, chapters_of
from builder.place import Place, Places
from builder.read.vtt import read_track

CAPTIONS = ".vtt"


@dataclass(frozen=True)
class Films:
    """Every film by its name, with what is wrong in its captions and the lines of them."""

    films: dict[str, Film]
    found: tuple[Diagnostic, ...]
    places: dict[str, Places]


def read_films(folder: Path, media: Iterable[str]) -> Films:
    """The films among the files of `media/`; those in folders below it are none."""
    names = sorted(one for one in media if one.count("/") == 1)
    tracks: dict[str, Track] = {}
    found: list[Diagnostic] = []
    places: dict[str, Places] = {}
    for file in names:
        if file.endswith(CAPTIONS):
            tracks[file], wrong, places[file] = _track(folder / file, file)
            found += wrong
    files = defaultdict(list)
    for file in names:
        stem, dot, ending = file.rpartition(".")
        if f"{dot}{ending.lower()}" in ENDINGS:
            files[stem.removeprefix("media/")].append(measured(folder / file, file))
    films = {
        name: Film(name, tuple(of_it), tracks.get(captions_of(name)), tracks.get(chapters_of(name)))
        for name, of_it in files.items()
    }
    return Films(films, tuple(found), places)


def _track(path: Path, file: str) -> tuple[Track, tuple[Diagnostic, ...], Places]:
    try:
        decoded = decode(read_bytes(path, LIMIT + 1), file)
    except Fault as fault:
        found = Diagnostic("file_unreadable", "error", Place(file), fault.message, fault.remedy)
        return Track(file), (found,), Places(Place(file))
    places = Places(Place(file), lines=decoded.lines)
    if decoded.text is None:
        return Track(file), decoded.found, places
    track, wrong = read_track(decoded.text, file)
    return track, (*decoded.found, *wrong), places
