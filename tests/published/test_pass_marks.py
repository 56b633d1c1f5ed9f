"""The least number right for usual pass marks; exact arithmetic, with the figures floating point gets wrong.

70 % is the least mark of a national registry of accounting sponsors, 77 % a physiotherapy programme's
for practical examinations; 75 and 80 % are common practice, no source.
"""

from fractions import Fraction

import pytest

from builder.grade.exam import least_right
from builder.model.exact import percent

TABLE = [
    (70, {10: 7, 12: 9, 15: 11, 20: 14, 25: 18}),
    (75, {10: 8, 12: 9, 15: 12, 20: 15, 25: 19}),
    (77, {10: 8, 12: 10, 15: 12, 20: 16, 25: 20}),
    (80, {10: 8, 12: 10, 15: 12, 20: 16, 25: 20}),
]
TRAPS = [(55, 100, 55), (14, 50, 7), (28, 25, 7), (56, 25, 14), (7, 100, 7), (58, 50, 29)]


@pytest.mark.parametrize(
    ("mark", "of", "least"), [(mark, of, least) for mark, row in TABLE for of, least in row.items()] + TRAPS
)
def test_the_least_number_right(mark: int, of: int, least: int) -> None:
    """The least number reaches the mark, one fewer does not."""
    share = Fraction(mark, 100)
    assert least_right(share, of) == least
    assert Fraction(least, of) >= share > Fraction(least - 1, of)


def test_69_565_percent_fails_70() -> None:
    """32 of 46 would print as 70 % if it were rounded."""
    assert Fraction(32, 46) < Fraction(70, 100)
    assert percent(Fraction(32, 46)) == "69.565 %"
    assert least_right(Fraction(70, 100), 46) == 33
