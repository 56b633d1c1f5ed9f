"""KR-20 on a teaching data set: Wuensch, East Carolina University, file KR20; and a standard error."""

from fractions import Fraction

import pytest

from builder.analyse.items import item_rest, reliability, reliability_error

TEN = """
1111110110 1011011101 1111011001 0010001000 0000010010
1110111111 1101110111 1111111101 0101111101 1101101110
"""
ROWS = [[int(mark) for mark in row] for row in TEN.split()]


def test_the_printed_parts_give_the_coefficient() -> None:
    """Printed: item variances sum to 2.18, totals have variance 5.84; so 10/9 (1 - 2.18/5.84)."""
    assert reliability(ROWS) == Fraction(10, 9) * (1 - Fraction(218, 584))
    assert [sum(row) for row in ROWS] == [8, 7, 7, 2, 2, 9, 8, 9, 7, 7]


def test_two_items_go_against_the_rest() -> None:
    """Items 7 and 9 correlate negatively (computed with two libraries)."""
    assert item_rest(ROWS, 6) == pytest.approx(-0.027445, abs=1e-6)
    assert item_rest(ROWS, 8) == pytest.approx(-0.123613, abs=1e-6)


def test_a_printed_standard_error() -> None:
    """Alpha .85 of 89 people on 7 items: 0.02456518 (reference page of the statpsych package)."""
    assert reliability_error(Fraction(85, 100), 89, 7) == pytest.approx(0.02456518, abs=5e-9)
