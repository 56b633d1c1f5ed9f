"""The short tags of a lesson: a line such as `[card friction]` that places something from the course."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal, get_args

TagKind = Literal["card", "case", "figure", "film", "question", "test", "flags", "phases"]
KINDS: tuple[TagKind, ...] = get_args(TagKind)
_LINE = re.compile(rf"^\[({'|'.join(KINDS)})(?: +([a-z][a-z0-9_]*))?\][ \t]*$", re.MULTILINE)
_NOTE = re.compile(r"^<!--.*?-->[ \t]*\n?", re.MULTILINE | re.DOTALL)
_PICTURE = re.compile(r"!\[([^\]\n]*)\]\(<?([^)\s>]+)")


@dataclass(frozen=True)
class LessonTag:
    """One tag: what it places, the id it names (empty for `flags` and `phases`), and its line from 1."""

    kind: TagKind
    name: str
    line: int


def lesson_parts(text: str) -> list[str | LessonTag]:
    """A lesson cut at its tags: Markdown and tags in order, nothing lost but the tags' own lines."""
    parts: list[str | LessonTag] = []
    done = 0
    for match in _LINE.finditer(text):
        kind = next(one for one in KINDS if one == match[1])
        parts += [
            text[done : match.start()],
            LessonTag(kind, match[2] or "", text.count("\n", 0, match.start()) + 1),
        ]
        done = match.end()
    return [part for part in (*parts, text[done:]) if part != ""]


def lesson_tags(text: str) -> list[LessonTag]:
    """The tags of a lesson, in order; those in a note are none."""
    return [part for part in lesson_parts(shown(text)) if isinstance(part, LessonTag)]


def without_notes(text: str) -> str:
    """A lesson without the author's notes to themself, which stand between `<!--` and `-->`."""
    return _NOTE.sub("", text)


def shown(text: str) -> str:
    """As `without_notes`, with empty lines in their place, so that every line keeps its number."""
    return _NOTE.sub(lambda note: "\n" * note[0].count("\n"), text)


@dataclass(frozen=True)
class Picture:
    """A picture in a lesson: its words for whoever cannot see it, its address, line and column from 1."""

    alt: str
    target: str
    line: int
    column: int


def lesson_pictures(text: str) -> list[Picture]:
    """The pictures of a lesson, in order; those in a note are none."""
    seen = shown(text)
    return [
        Picture(match[1].strip(), match[2], *_at(seen, match.start())) for match in _PICTURE.finditer(seen)
    ]


def _at(text: str, index: int) -> tuple[int, int]:
    """Line and column of a letter, both from 1."""
    return text.count("\n", 0, index) + 1, index - text.rfind("\n", 0, index)


def media_of(picture: Picture) -> str:
    """The file of the course that a picture shows, such as `media/wrap.png`; empty where it names none."""
    return picture.target.removeprefix("../") if picture.target.startswith("../media/") else ""
