"""Points by a rubric: what a person marked, as a share of all that could be earned."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from builder.model.station import Criterion


def points(criteria: Sequence[Criterion], marked: Mapping[str, int]) -> Fraction:
    """The weighted share of all points; what was not marked earns none. Common practice, no source."""
    earned = sum(one.weight * marked.get(one.id, 0) for one in criteria)
    return Fraction(earned, sum(one.weight * (len(one.levels) - 1) for one in criteria))
