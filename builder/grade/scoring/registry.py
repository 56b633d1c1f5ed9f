"""The one way to mark an answer of any kind by a named policy."""

from __future__ import annotations

from fractions import Fraction

from builder.grade.scoring.choices import ChoiceKey, score_choice
from builder.grade.scoring.keyed import Keyed
from builder.grade.scoring.matching import MatchKey, score_match
from builder.grade.scoring.number import NumberKey, score_number
from builder.grade.scoring.ordering import OrderKey, score_order
from builder.grade.scoring.panel import score_panel
from builder.grade.scoring.value import Value


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
