"""What the answers say about one question."""

from __future__ import annotations

from collections.abc import Sequence

from builder.analyse.gate import difficulty
from builder.analyse.sitters import Sitting
from builder.model.analysis import Figure, OptionCount, QuestionFigures
from builder.model.key import KeyAnswer
from builder.model.paper import PaperQuestion


def question_figures(
    answer: KeyAnswer, asked: PaperQuestion | None, sittings: Sequence[Sitting], discrimination: Figure
) -> QuestionFigures:
    """Counts for every option with its words, where the paper is at hand, and the share right."""
    chosen = [sitting.chosen.get(answer.question) for sitting in sittings]
    titles = {one.id: " · ".join((one.title, *one.chips)) for one in (asked.options if asked else ())}
    return QuestionFigures(
        question=answer.question,
        stem=asked.stem if asked else "",
        n=len(sittings),
        unanswered=sum(one is None for one in chosen),
        options=tuple(
            OptionCount(
                option=option,
                title=titles.get(option, ""),
                right=option in answer.right,
                count=sum(one is not None and option in one for one in chosen),
            )
            for option in answer.options
        ),
        difficulty=difficulty([sitting.marks[answer.question] for sitting in sittings]),
        discrimination=discrimination,
    )
