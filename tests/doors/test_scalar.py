"""What an unquoted scalar stands for."""

from decimal import Decimal

import pytest

from builder.doors.scalar import Scalar, meaning


@pytest.mark.parametrize(
    ("plain", "meant"),
    [
        ("", None),
        ("~", None),
        ("null", None),
        ("true", True),
        ("false", False),
        ("0", 0),
        ("12", 12),
        ("-3", -3),
        ("+4", 4),
        ("7.5", Decimal("7.5")),
        ("-0.50", Decimal("-0.50")),
    ],
)
def test_what_is_more_than_text(plain: str, meant: Scalar) -> None:
    """Null, truth values, whole numbers and plain decimals are read as such, exactly."""
    assert meaning(plain) == meant
    assert type(meaning(plain)) is type(meant)


TEXTS = """
yes no on off Yes NO True FALSE Null 007 010 00123 1_000 0x1F 1e3 12e03 .5 5. 1:30 09:00 2026-01-05
NaN .inf - + -- 1-2 3-12 MA0045E7 << = 75% 1,5 ١٢
"""


@pytest.mark.parametrize("plain", TEXTS.split())
def test_all_else_is_text(plain: str) -> None:
    """Words, codes, spans, times, dates and numbers in other notations stay as written."""
    assert meaning(plain) == plain


def test_digits_without_end_are_text() -> None:
    """A number longer than any measure is no number, so that no size can stop the reader."""
    assert meaning("9" * 30) == int("9" * 30)
    assert meaning("9" * 5000) == "9" * 5000
