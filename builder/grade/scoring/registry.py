"""Every scoring policy by kind of question, and the one way to mark an answer with it."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType

from builder.grade.scoring.choices import CHOICE_POLICIES, ChoiceKey, score_choice
from builder.grade.scoring.keyed import Keyed
from builder.grade.scoring.matching import MATCH_POLICIES, MatchKey, score_match
from builder.grade.scoring.number import NUMBER_POLICIES, NumberKey, score_number
from builder.grade.scoring.ordering import ORDER_POLICIES, OrderKey, score_order
from builder.grade.scoring.panel import PANEL_POLICIES, score_panel
from builder.grade.scoring.value import Value
from builder.model.question import QuestionKind

POLICIES: Mapping[QuestionKind, tuple[str, ...]] = MappingProxyType(
    {
        "one": ("exact",),
        "many": tuple(CHOICE_POLICIES),
        "order": tuple(ORDER_POLICIES),
        "match": tuple(MATCH_POLICIES),
        "number": tuple(NUMBER_POLICIES),
        "panel": tuple(PANEL_POLICIES),
        "text": (),
    }
)


def score(key: Keyed, policy: str, value: Value | None) -> Fraction:
    """What an answer earns, from 0 to 1, exactly; what was not answered earns nothing."""
    if value is None:
        return Fraction(0)
    if isinstance(key, ChoiceKey):
        return score_choice(key, policy, value)
    if isinstance(key, OrderKey):
        return score_order(key, policy, value)
    if isinstance(key, MatchKey):
        return score_match(key, policy, value)
    if isinstance(key, NumberKey):
        return score_number(key, policy, value)
    return score_panel(key, policy, value)
