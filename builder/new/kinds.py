"""What may be begun: where each sort of file goes, what is asked for it, and where the course lists it."""

from __future__ import annotations

from typing import NamedTuple

from builder.place import Path


class NewKind(NamedTuple):
    """A sort of file to begin: its folder, its ending, and the list of `course.yml` that names it."""

    what: str
    folder: str
    ending: str
    listed: Path = ()


KINDS: dict[str, NewKind] = {
    "case": NewKind("case", "cases", ".yml", ("practice", 0, "cases")),
    "station": NewKind("station", "stations", ".yml", ("requirements", "stations")),
    "lesson": NewKind("lesson", "lessons", ".md", ("lessons",)),
    "question": NewKind("question", "questions", ".yml"),
    "rule": NewKind("rule", "rules", ".yml"),
    "card": NewKind("card", "cards", ".yml"),
    "board": NewKind("board", "boards", ".yml", ("boards",)),
    "class": NewKind("class", "classes", ""),
}
QUESTIONS = ("one", "many", "order", "match", "number", "panel", "text")
