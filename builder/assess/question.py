"""A question in two parts: what may be seen, and what is right. They meet only in this folder."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from builder.model.keyed import NumberRange, Rubric
from builder.model.paper import Scene
from builder.model.plan import QuestionTopic
from builder.model.practice import Mark
from builder.model.question import QuestionKind


@dataclass(frozen=True)
class Choice:
    """What one option shows: a title, and chips for how it is done."""

    title: str
    chips: tuple[str, ...] = ()


@dataclass(frozen=True)
class Shown:
    """All that a participant may see of a question, and what names it to us.

    Options stand in an order of their own: rising where they have one (`in_order`), else by their text;
    never as the author listed them. For an order they are its steps, for matching its left sides, with the
    right sides as `partners`. A question that an author wrote has no case, visit or scene; `part` names it.
    """

    case: str
    visit: str
    topic: QuestionTopic
    part: str
    kind: QuestionKind
    stem: str
    hint: str
    scene: Scene | None
    options: tuple[Choice, ...]
    in_order: bool
    partners: tuple[Choice, ...] = ()
    unit: str = ""
    words: int = 0

    @cached_property
    def identity(self) -> str:
        """The name of this question within a course."""
        return f"{self.case}/{self.visit}/{self.topic}/{self.part}"

    @property
    def origin(self) -> str:
        """What it was made from: the name of its case, or its own file."""
        return self.case or f"questions/{self.part}"


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
    """What is right, by places in `Shown.options`, and what is said of each of them.

    `right` are the right options, all steps in their right order, or the options with most votes; `must` are
    pairs of steps of which the first must come first; `pairs` are places of options and of their partners,
    `spare` is what is said of each partner, None where its left side has said it. `numbers` are numbers with
    what is said of them, the right one first.
    """

    right: tuple[int, ...]
    said: tuple[Said, ...]
    must: tuple[tuple[int, int], ...] = ()
    pairs: tuple[tuple[int, int], ...] = ()
    spare: tuple[Said | None, ...] = ()
    votes: tuple[int, ...] = ()
    within: NumberRange | None = None
    numbers: tuple[tuple[str, Said], ...] = ()
    rubric: Rubric | None = None

    @property
    def every(self) -> tuple[Said, ...]:
        """All that is said of any part of it."""
        return (*self.said, *(one for one in self.spare if one), *(said for _, said in self.numbers))


@dataclass(frozen=True)
class Question:
    """Both parts of one question."""

    shown: Shown
    judged: Judged
