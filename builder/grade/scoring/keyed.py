"""What is right in an author-written question, under the names that its answer sheets use."""

from __future__ import annotations

from collections.abc import Sequence

from builder.grade.scoring.choices import ChoiceKey
from builder.grade.scoring.matching import MatchKey
from builder.grade.scoring.number import NumberKey
from builder.grade.scoring.ordering import OrderKey
from builder.grade.scoring.panel import PanelKey
from builder.model.question import AuthorQuestion
from builder.model.question_kinds import Ordering

Keyed = ChoiceKey | OrderKey | MatchKey | NumberKey | PanelKey


def keyed(question: AuthorQuestion, names: Sequence[str], partners: Sequence[str] = ()) -> Keyed | None:
    """The key of a question; None for a written answer, which a person marks.

    `names` are those of its options, steps or left sides, `partners` those of its right sides, as written.
    """
    if question.choices:
        options = zip(names, question.choices.options, strict=True)
        return ChoiceKey(tuple(names), frozenset(name for name, one in options if one.right))
    if question.order:
        return _order(question.order, names)
    if question.match:
        return MatchKey(frozenset(zip(names, partners[: len(question.match.pairs)], strict=True)))
    if question.number:
        return NumberKey(*question.number.bounds, unit=question.number.unit)
    if question.panel:
        votes = (one.votes for one in question.panel.options)
        return PanelKey(tuple(zip(names, votes, strict=True)))
    return None


def _order(order: Ordering, names: Sequence[str]) -> OrderKey:
    name = dict(zip((step.id for step in order.steps), names, strict=True))
    must = ((name[first], name[step.id]) for step in order.steps for first in step.after)
    return OrderKey(tuple(names), tuple(must))
