"""Points by a rubric."""

from fractions import Fraction

import pytest

from builder.grade.scoring.rubric import points
from builder.model.station import Criterion

CRITERIA = (
    Criterion(id="stops", title="Stops", levels=("No", "In part", "Yes"), weight=2),
    Criterion(id="plain", title="Speaks plainly", levels=("No", "Yes")),
)


@pytest.mark.parametrize(
    ("marked", "earned"),
    [
        ({"stops": 2, "plain": 1}, Fraction(1)),
        ({"stops": 1, "plain": 1}, Fraction(3, 5)),
        ({"stops": 0, "plain": 1}, Fraction(1, 5)),
        ({"plain": 1}, Fraction(1, 5)),
        ({}, Fraction(0)),
    ],
)
def test_levels_count_by_their_weight(marked: dict[str, int], earned: Fraction) -> None:
    """A level is as many points as its number, times the weight; what was not marked earns none."""
    assert points(CRITERIA, marked) == earned
