"""A question in two parts: what may be seen, and what is right. They meet only in this folder."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from builder.model.course import QuestionTopic
from builder.model.paper import Scene
from builder.model.practice import Mark


@dataclass(frozen=True)
class Choice:
    """What one option shows: a title, and chips for how it is done."""

    title: str
    chips: tuple[str, ...] = ()


@dataclass(frozen=True)
class Shown:
    """All that a participant may see of a question, and what names it to us.

    Options stand in an order of their own: rising where they have one (`in_order`), else by their text;
    never as the author listed them.
    """

    case: str
    visit: str
    topic: QuestionTopic
    part: str
    kind: Literal["one", "many"]
    stem: str
    hint: str
    scene: Scene
    options: tuple[Choice, ...]
    in_order: bool

    @property
    def identity(self) -> str:
        """The name of this question within a course."""
        return f"{self.case}/{self.visit}/{self.topic}/{self.part}"


@dataclass(frozen=True)
class Ground:
    """On what an answer rests: sources and strength in words, both sides where contested, and the rules."""

    rests_on: str = ""
    contested: str = ""
    rules: tuple[str, ...] = ()
    reviewed: bool = False


@dataclass(frozen=True)
class Said:
    """What is said of one option once it may be told."""

    mark: Mark
    word: str
    reason: str
    ground: Ground
    would_change: tuple[str, ...] = ()


@dataclass(frozen=True)
class Judged:
    """Which options are right, by their place in `Shown.options`, and what is said of each."""

    right: tuple[int, ...]
    said: tuple[Said, ...]


@dataclass(frozen=True)
class Question:
    """Both parts of one question."""

    shown: Shown
    judged: Judged
