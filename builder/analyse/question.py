"""What the answers say about one question."""

from __future__ import annotations

from collections.abc import Sequence

from builder.analyse.counts import counts
from builder.analyse.gate import difficulty
from builder.analyse.sitters import Sitting
from builder.model.analysis import Figure, QuestionFigures
from builder.model.key import KeyAnswer
from builder.model.paper import PaperQuestion


def question_figures(
    answer: KeyAnswer, asked: PaperQuestion | None, sittings: Sequence[Sitting], discrimination: Figure
) -> QuestionFigures:
    """Counts for every part with its words, where the paper is at hand, and the mean mark."""
    given = [sitting.given.get(answer.question) for sitting in sittings]
    return QuestionFigures(
        question=answer.question,
        stem=asked.stem.replace("**", "") if asked else "",
        n=len(sittings),
        unanswered=sum(one is None for one in given),
        options=counts(answer, asked, sittings),
        difficulty=difficulty([sitting.marks[answer.question] for sitting in sittings]),
        discrimination=discrimination,
    )
