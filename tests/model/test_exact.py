"""Numbers in print are cut, never rounded up."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.model.exact import number, percent, places


@pytest.mark.parametrize(
    ("value", "count", "text"),
    [
        (Fraction(87, 10), 2, "8.70"),
        (Fraction(5, 3), 2, "1.66"),
        (Fraction(1, 100), 2, "0.01"),
        (Fraction(1, 1000), 2, "0.00"),
        (Fraction(0), 2, "0.00"),
        (Fraction(1234, 1), 1, "1234.0"),
        (Fraction(9, 2), 0, "4"),
    ],
)
def test_places_are_cut(value: Fraction, count: int, text: str) -> None:
    """A number has as many decimals as asked, the rest is cut off."""
    assert places(value, count) == text


@pytest.mark.parametrize(
    ("share", "text"),
    [
        (Fraction(32, 46), "69.565 %"),
        (Fraction(7, 10), "70 %"),
        (Fraction(699999, 1000000), "69.999 %"),
        (Fraction(1), "100 %"),
        (Fraction(0), "0 %"),
        (Fraction(906, 1000), "90.6 %"),
    ],
)
def test_percent_has_no_idle_zeros(share: Fraction, text: str) -> None:
    """A share prints in percent with at most three decimals."""
    assert percent(share) == text


@given(st.fractions(0, 1), st.integers(1, 100))
def test_what_fails_never_prints_as_a_pass(share: Fraction, mark: int) -> None:
    """A share below a whole percent never prints at or above it."""
    if share < Fraction(mark, 100):
        assert Fraction(percent(share).removesuffix(" %")) < mark


def test_a_count_prints_whole_where_it_is_whole() -> None:
    """Marks print without decimals unless they come in parts."""
    assert (number(Fraction(14)), number(Fraction(41, 3))) == ("14", "13.66")
