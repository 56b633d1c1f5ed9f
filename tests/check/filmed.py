"""A small course with one lesson that places a film, and the film itself."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from types import ModuleType

from builder.model.film import Film, FilmFile, Track
from builder.read.vtt import read_track
from tests.check.wording.written import course_of

FILM = FilmFile("media/pad.webm", 4000, "VP9", 64, 36)
LESSON = "# Cold\n\n[film pad]\n"


def track(*spans: str, file: str = "media/pad.vtt") -> Track:
    """Captions with these times, such as `00:01.000 --> 00:02.000`, each with a word below it."""
    blocks = [span if "\n" in span else f"{span}\nA pad." for span in spans]
    return read_track("WEBVTT\n\n" + "\n\n".join(blocks), file)[0]


def told(
    check: ModuleType,
    *,
    files: Iterable[FilmFile] = (FILM,),
    captions: Track | None = None,
    chapters: Track | None = None,
    lesson: str = LESSON,
    media: Iterable[str] = (),
) -> list[tuple[str, int, str, str]]:
    """What a check says of a film: file, line, message and remedy; without files there is none."""
    made = course_of(lesson=lesson)
    film = Film("pad", tuple(files), captions, chapters)
    films = {"pad": film} if film.files else {}
    course = replace(made.course, films=films, media=frozenset(media))
    found = check.check(replace(made, course=course))
    return [(one.file, one.line, one.message, one.remedy) for one in found]
