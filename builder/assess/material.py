"""What questions are made from: one visit of one case with its judgement."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Literal

from builder.assess.question import Choice, Judged, Question, Said, Shown
from builder.assess.scene import scene_of
from builder.model.case import Case, Visit
from builder.model.judgement import VisitJudgement
from builder.model.library import Course
from builder.model.paper import Scene
from builder.model.plan import QuestionTopic


@dataclass(frozen=True)
class Row:
    """One option with what is held of it."""

    choice: Choice
    right: bool
    said: Said


@dataclass(frozen=True)
class Text:
    """What a question asks, and how it is to be answered."""

    stem: str
    hint: str
    kind: Literal["one", "many", "order"] = "one"


@dataclass(frozen=True)
class Material:
    """One judged visit; `alone` where it is to be understood without the visits around it."""

    course: Course
    case: Case
    visit: Visit
    judged: VisitJudgement
    alone: bool

    @cached_property
    def scene(self) -> Scene:
        """The visit in words."""
        return scene_of(self.course.content, self.case, self.visit, alone=self.alone)

    def question(self, topic: QuestionTopic, text: Text, rows: Iterable[Row], part: str = "") -> Question:
        """A question whose options have no order of their own: they stand by their text, each once."""
        once = {(row.choice.title, row.choice.chips): row for row in rows}
        return self._joined(topic, text, [once[key] for key in sorted(once)], part, in_order=False)

    def ordered(self, topic: QuestionTopic, text: Text, rows: Iterable[Row], part: str = "") -> Question:
        """A question whose options rise in an order of their own."""
        return self._joined(topic, text, list(rows), part, in_order=True)

    def steps(self, topic: QuestionTopic, text: Text, rows: Iterable[Row], part: str = "") -> Question:
        """A question whose options are put in order; the rows stand in the right one, and show by text."""
        right = list(rows)
        shown = sorted(right, key=lambda row: row.choice.title)
        question = self._joined(topic, text, shown, part, in_order=False)
        return replace(question, judged=replace(question.judged, right=tuple(map(shown.index, right))))

    def _joined(
        self, topic: QuestionTopic, text: Text, rows: list[Row], part: str, *, in_order: bool
    ) -> Question:
        shown = Shown(
            case=self.case.id,
            visit=self.visit.id,
            topic=topic,
            part=part,
            kind=text.kind,
            stem=text.stem,
            hint=text.hint,
            scene=self.scene,
            options=tuple(row.choice for row in rows),
            in_order=in_order,
        )
        right = tuple(index for index, row in enumerate(rows) if row.right)
        return Question(shown, Judged(right, tuple(row.said for row in rows)))
