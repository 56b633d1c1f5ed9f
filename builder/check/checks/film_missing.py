"""A film that a lesson places is a file in `media/`."""

from __future__ import annotations

from collections.abc import Iterator
from difflib import get_close_matches
from pathlib import PurePosixPath

from builder.check.evidence import Evidence, Finding
from builder.check.films import LESSON, at_tag, placed_films
from builder.diagnostic import Level
from builder.model.film import ENDINGS
from builder.model.kind import Example
from builder.model.library import Course

LEVEL: Level = "error"
WHY = "A course is shown in halls without a network: a film has to lie in the course itself."
BAD = Example("lessons/cold.md", "# Cold\n\n[card cold_pack]\n\n[film pda]\n")
GOOD = LESSON


def check(evidence: Evidence) -> Iterator[Finding]:
    """Every tag that places a film which is not there."""
    for file, tag, film in placed_films(evidence.course):
        if film is None:
            message = f"There is no film `{tag.name}` in `media/`."
            yield at_tag(file, tag, message, _remedy(evidence.course, tag.name))


def _remedy(course: Course, name: str) -> str:
    """The name that was meant, the file to call otherwise, or where to put one."""
    if near := get_close_matches(name, course.films, n=1):
        return f"Did you mean `[film {near[0]}]`?"
    for one in sorted(course.media):
        path = PurePosixPath(one)
        if _plain(path.stem) == name and path.suffix.lower() in ENDINGS:
            return f"Move `{one}` to `media/{name}{path.suffix.lower()}`."
        if _plain(path.stem) == name and path.suffix not in (".vtt", ".srt"):
            return f"`{one}` does not play in every browser: save it as `media/{name}.mp4`."
    return f"Put the film into `media/` as `{name}.mp4` or `{name}.webm`."


def _plain(stem: str) -> str:
    """A file's stem as the name a tag could have for it."""
    return stem.lower().replace(" ", "_").replace("-", "_")
