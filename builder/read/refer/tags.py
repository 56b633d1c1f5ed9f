"""Tags of lessons that place what is not there."""

from __future__ import annotations

import re
from collections.abc import Iterator

from builder.diagnostic import Diagnostic
from builder.model.lesson import KINDS, lesson_tags, shown
from builder.place import Place
from builder.read.nearest import nearest, quoted, suggest
from builder.read.shelf import Shelf
from builder.read.written import Written

NAMED = {"card": "card", "figure": "figure", "case": "case", "question": "question", "test": "test"}
_LOOKS_LIKE_TAG = re.compile(r"\[([a-z]+)( +[^\]]*)?\][ \t]*")


def wrong_tags(shelf: Shelf) -> Iterator[Diagnostic]:
    """Every tag that names nothing, and every line that looks like a tag and is none."""
    for lesson in shelf.lessons.values():
        text = str(lesson.value)
        tags = {tag.line: tag for tag in lesson_tags(text)}
        for tag in tags.values():
            if (what := NAMED.get(tag.kind)) and not shelf.knows(what, tag.name):
                message = f"There is no {what} {quoted(tag.name)}."
                remedy = suggest(tag.name, shelf.names[what])
                yield Diagnostic(f"{what}_unknown", "error", _line(lesson, tag.line), message, remedy)
        yield from _no_tags(lesson, set(tags))


def _no_tags(lesson: Written, tagged: set[int]) -> Iterator[Diagnostic]:
    for number, line in enumerate(shown(str(lesson.value)).split("\n"), start=1):
        match = _LOOKS_LIKE_TAG.fullmatch(line)
        if match and number not in tagged and (near := nearest(match[1], KINDS)):
            remedy = f"Write `[{near} ...]` with an id, alone on its line and without spaces before it."
            yield Diagnostic(
                "tag_unknown", "warning", _line(lesson, number), "This looks like a tag and is none.", remedy
            )


def _line(lesson: Written, number: int) -> Place:
    return Place(lesson.file, number, 1, number, len(lesson.places.lines[number - 1]) + 1)
