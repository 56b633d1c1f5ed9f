"""A judgement earns by how many of the panel share it."""

from fractions import Fraction

import pytest

from builder.grade.scoring.panel import PanelKey, score_panel
from builder.grade.scoring.value import Value

KEY = PanelKey((("wait", 9), ("go_on", 3), ("refer", 0)))


@pytest.mark.parametrize(
    ("value", "share"),
    [
        ("wait", Fraction(1)),
        ("go_on", Fraction(1, 3)),
        ("refer", Fraction(0)),
        ("unknown", Fraction(0)),
        (("wait",), Fraction(1)),
        (("wait", "go_on"), Fraction(0)),
        ((), Fraction(0)),
    ],
)
def test_an_option_earns_its_votes_of_the_most(value: Value, share: Fraction) -> None:
    """The option most chosen earns all, one that nobody chose nothing, two options nothing."""
    assert score_panel(KEY, "aggregate", value) == share
