"""Credit by the panel's votes: Charlin, Roy, Brailovsky, Goulet & van der Vleuten 2000.

The votes for an answer, of those for the answer with most votes, as the method's authors describe it; the
panel of ten is a worked example of that rule.
"""

from fractions import Fraction

import pytest

from builder.grade.scoring.panel import PanelKey, score_panel

TEN = PanelKey((("-2", 0), ("-1", 1), ("0", 2), ("+1", 6), ("+2", 1)))


@pytest.mark.parametrize(
    ("anchor", "credit"), [("-2", "0"), ("-1", "1/6"), ("0", "1/3"), ("+1", "1"), ("+2", "1/6")]
)
def test_a_panel_of_ten(anchor: str, credit: str) -> None:
    """Six of ten set the scale."""
    assert score_panel(TEN, "aggregate", anchor) == Fraction(credit)


def test_answers_with_equal_votes_earn_the_same() -> None:
    """Three with five votes each all earn everything."""
    tie = PanelKey((("-1", 0), ("0", 5), ("+1", 5), ("+2", 5)))
    assert [score_panel(tie, "aggregate", one) for one in ("-1", "0", "+1", "+2")] == [0, 1, 1, 1]
