"""A number is read as it was typed and compared exactly."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.grade.scoring.number import NumberKey, number_of, score_number


@pytest.mark.parametrize(
    ("typed", "unit", "number"),
    [
        ("7,5", "cm", Fraction(15, 2)),
        ("7.5 CM", "cm", Fraction(15, 2)),
        ("-0,5%", "%", Fraction(-1, 2)),
        ("20", "times a day", Fraction(20)),
        ("20 times a day", "times a day", Fraction(20)),
        ("5 cm", "m", None),
        ("20 hours", "minutes", None),
        ("1,000.5", "m", None),
        ("1.000.000", "m", None),
        ("1 000", "m", None),
        ("1/2", "m", None),
        ("nan", "m", None),
        ("inf", "m", None),
        ("1_0", "m", None),
        (".", "m", None),
        ("-", "m", None),
        ("9" * 31, "m", None),
    ],
)
def test_what_was_typed_is_read_or_left(typed: str, unit: str, number: Fraction | None) -> None:
    """Its own unit may stand; nothing is guessed."""
    assert number_of(typed, unit) == number


def test_a_comma_is_always_the_decimal_one() -> None:
    """A thousand written with a comma is read as one, since nothing tells the two apart."""
    assert number_of("1,000", "m") == 1


@given(st.decimals(-999, 999, places=3), st.decimals(0, 9, places=3))
def test_the_ends_are_right_and_just_beyond_is_wrong(value: Decimal, width: Decimal) -> None:
    """Both ends of the tolerance count, a thousandth more does not; no float comes between."""
    key = NumberKey(Fraction(value) - Fraction(width), Fraction(value) + Fraction(width), "cm")
    step = Decimal("0.001")
    marks = [
        score_number(key, "within", f"{one:f}")
        for one in (value - width - step, value - width, value, value + width, value + width + step)
    ]
    assert marks == [0, 1, 1, 1, 0]


def test_several_values_are_no_number() -> None:
    """A list earns nothing, even of one right number."""
    assert score_number(NumberKey(Fraction(1), Fraction(1), "cm"), "within", ("1",)) == 0
