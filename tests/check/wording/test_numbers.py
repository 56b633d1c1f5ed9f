"""What span of values an option stands for."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.check.wording.numbers import TIME, Span, span_of

F = Fraction


@pytest.mark.parametrize(
    ("text", "span"),
    [
        ("20 minutes", Span(TIME, F(20), F(20))),
        ("ten minutes", Span(TIME, F(10), F(10))),
        ("half an hour", Span(TIME, F(30), F(30))),
        ("an hour", Span(TIME, F(60), F(60))),
        ("a quarter of an hour", Span(TIME, F(15), F(15))),
        ("72 hours to 7 days", Span(TIME, F(4320), F(10080))),
        ("day 2 or 3", Span(TIME, F(2880), F(4320))),
        ("from week 3 to week 6", Span(TIME, F(30240), F(60480))),
        ("1 to 5", Span("", F(1), F(5))),
        ("0.81 to 1.2", Span("", F("0.81"), F("1.2"))),
        ("up to 3 of 10", Span("", None, F(3))),
        ("in less than 24 hours", Span(TIME, None, F(1440), high_open=True)),
        ("55 and over", Span("", F(55), None)),
        ("10 kg or less", Span("kg", None, F(10))),
        ("at least 40 minutes", Span(TIME, F(40), None)),
        ("Above 1.2", Span("", F("1.2"), None, low_open=True)),
        ("15 kg", Span("kg", F(15), F(15))),
    ],
)
def test_quantities_are_read(text: str, span: Span) -> None:
    """Points, ranges and bounds, in digits and in words."""
    assert span_of(text) == span


@pytest.mark.parametrize(
    "text", ["blue", "as long as the kettle", "two strokes of the palm", "", "5 minutes of ice"]
)
def test_what_is_no_quantity_is_none(text: str) -> None:
    """An option that says more than a number and its unit is left alone."""
    assert span_of(text) is None


@pytest.mark.parametrize(
    ("one", "other", "shared"),
    [
        ("1 to 5 minutes", "5 to 10 minutes", True),
        ("1 to 5 minutes", "6 to 10 minutes", False),
        ("under 20", "20 to 40", False),
        ("up to 20", "20 to 40", True),
        ("at least 10", "at least 40", True),
        ("60 minutes", "an hour", True),
        ("5 kg", "5 minutes", False),
        ("above 1.2", "0.8 to 1.2", False),
    ],
)
def test_sharing_a_value(one: str, other: str, shared: bool) -> None:  # noqa: FBT001 - a row of a table
    """Ends count where they belong to both."""
    first, second = span_of(one), span_of(other)
    assert first is not None
    assert second is not None
    assert first.meets(second) is shared
    assert second.meets(first) is shared


@given(st.integers(0, 99), st.integers(0, 99), st.integers(0, 99), st.integers(0, 99))
def test_ranges_meet_as_their_numbers_do(a: int, b: int, c: int, d: int) -> None:
    """Closed ranges share a value exactly where some whole number lies in both."""
    (a, b), (c, d) = sorted((a, b)), sorted((c, d))
    one, other = span_of(f"{a} to {b}"), span_of(f"{c} to {d}")
    assert one is not None
    assert other is not None
    assert one.meets(other) is bool(set(range(a, b + 1)) & set(range(c, d + 1)))
