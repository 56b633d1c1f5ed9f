"""A film in a lesson: the player, its chapters and its words, which can all be read without it."""

from __future__ import annotations

from dataclasses import dataclass
from mimetypes import guess_type

from builder.model.film import Cue, Film, Track, clock
from builder.render import address
from builder.render.maker import Maker

SCRIPT = "assets/film.js"


@dataclass(frozen=True)
class Line:
    """A caption or chapter as it stands on the page; times for the script in thousandths of a second."""

    time: str
    text: str
    start: int
    end: int
    settings: str


def film_part(made: Maker, at: str, film: Film) -> str:
    """The film as a part of the page `at`; what it says can be read, printed and found as text."""
    files = [(address.way(at, one.file), guess_type(one.file.lower())[0]) for one in film.files]
    values = {
        "film": film,
        "length": clock(film.length),
        "files": files,
        "size": next(((one.width, one.height) for one in film.files if one.width), None),
        "chapters": _lines(film.chapters),
        "lines": _lines(film.captions),
    }
    return made.fill("parts/film.html", values).strip()


def _lines(track: Track | None) -> list[Line]:
    return [_line(cue) for cue in track.cues] if track else []


def _line(cue: Cue) -> Line:
    settings = " ".join(f"{name}:{value}" for name, value in cue.settings)
    return Line(clock(cue.start), cue.text, cue.start, cue.end, settings)
