"""What checks look at in films: those that lessons place, and their captions and chapters cue by cue."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.model.film import Cue, Film, Track
from builder.model.kind import Example
from builder.model.lesson import LessonTag, lesson_tags
from builder.model.library import Course

LESSON = Example("lessons/cold.md", "# Cold\n\n[card cold_pack]\n\n[film pad]\n")


def placed_films(course: Course) -> Iterator[tuple[str, LessonTag, Film | None]]:
    """Every film tag with the lesson it stands in, and its film if there is one."""
    for stem, text in course.lessons.items():
        for tag in lesson_tags(text):
            if tag.kind == "film":
                yield f"lessons/{stem}.md", tag, course.films.get(tag.name)


def at_tag(file: str, tag: LessonTag, message: str, remedy: str) -> Finding:
    """A finding at the line that places a film."""
    return Finding(file, (), message, remedy, line=tag.line)


def tracks(evidence: Evidence) -> Iterator[tuple[Film, Track]]:
    """The captions and the chapters of every film."""
    for film in evidence.course.films.values():
        yield from ((film, track) for track in film.tracks)


def cues(evidence: Evidence) -> Iterator[tuple[Film, Track, Cue]]:
    """Every single caption and chapter."""
    for film, track in tracks(evidence):
        yield from ((film, track, cue) for cue in track.cues)


def at_cue(track: Track, cue: Cue, message: str, remedy: str) -> Finding:
    """A finding at the line of a cue's times."""
    return Finding(track.file, (), message, remedy, line=cue.line)
