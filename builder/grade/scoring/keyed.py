"""The key of a question in the form that its policies take."""

from __future__ import annotations

from builder.grade.scoring.choices import ChoiceKey
from builder.grade.scoring.matching import MatchKey
from builder.grade.scoring.number import NumberKey
from builder.grade.scoring.ordering import OrderKey
from builder.grade.scoring.panel import PanelKey
from builder.model.keyed import KeyedParts

Keyed = ChoiceKey | OrderKey | MatchKey | NumberKey | PanelKey


def keyed(parts: KeyedParts) -> Keyed | None:
    """What policies score an answer against; None for a written answer, which a person marks."""
    if parts.kind == "text":
        return None
    if parts.kind == "order":
        return OrderKey(parts.right, parts.must)
    if parts.kind == "match":
        return MatchKey(frozenset(parts.pairs))
    if parts.kind == "panel":
        return PanelKey(parts.votes)
    if parts.within is not None:
        return NumberKey(parts.within.least, parts.within.most, unit=parts.within.unit)
    return ChoiceKey(parts.options, frozenset(parts.right))
