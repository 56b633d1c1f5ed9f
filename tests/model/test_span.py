"""How an exact span of time reads."""

from decimal import Decimal

import pytest

from builder.model.span import exact_span

WORDS = {
    "q_hours.one": "{n} hour",
    "q_hours": "{n} hours",
    "q_days.one": "{n} day",
    "q_days": "{n} days",
    "q_days_and_hours": "{days} and {hours}",
}


@pytest.mark.parametrize(
    ("hours", "words"),
    [
        ("1", "1 hour"),
        ("0.5", "0.5 hours"),
        ("71", "71 hours"),
        ("72", "3 days"),
        ("73", "3 days and 1 hour"),
        ("748", "31 days and 4 hours"),
    ],
)
def test_no_hour_is_lost(hours: str, words: str) -> None:
    """Below three days a span is told in hours, from then on in days with the hours left over."""
    assert exact_span(WORDS, Decimal(hours)) == words
