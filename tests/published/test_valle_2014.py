"""Soreness after unaccustomed work: onset, peak and end.

Valle X et al., Muscles Ligaments Tendons J 2014;3(4):295-302: onset 6 to 12 h, peak 48 to 72 h, gone in 5
to 7 days. Common summaries, read second-hand: peak 24 to 72 h.
"""

import pytest

from builder.judge.space import Value
from tests.content.clients import client, option, seen
from tests.content.library import content
from tests.content.taught import rows_of

SORE: dict[str, Value] = {
    "injury": "soreness",
    "swelling_trend": "none",
    "heat": "none",
    "flare": "none",
    "tenderness": "firm_pressure",
}


@pytest.mark.parametrize(
    ("hours", "named"),
    [
        ("5", []), ("6", ["onset"]), ("12", ["onset"]), ("13", []), ("48", ["peak"]), ("72", ["peak"]),
        ("120", ["gone"]), ("168", ["gone"]),
    ],
)  # fmt: skip
def test_the_timeline(hours: str, named: list[str]) -> None:
    """6, 12, 48, 72, 120 and 168 hours belong to their stretch (Valle 2014)."""
    assert rows_of("soreness_timeline", hours) == named


def test_forty_hours_are_in_the_wider_peak() -> None:
    """40 h lies in the 24 to 72 h of common summaries (second-hand), and the list says so."""
    assert "24 to 72 hours" in (content().severity.background["soreness_timeline"].note or "")


def test_phase_does_not_apply_and_gliding_eases() -> None:
    """At 40 h soreness has no phase of healing, and a light gliding stroke is right."""
    frame = seen(client(40, SORE))
    assert frame.phase.possible == ("none",)
    assert option(frame, "glide").right


@pytest.mark.parametrize(("hours", "answer"), [(167, "go_on"), (168, "go_on"), (169, "refer")])
def test_longer_than_seven_days_is_something_else(hours: int, answer: str) -> None:
    """Soreness over 7 days refers (Valle 2014: gone in 5 to 7 days)."""
    assert seen(client(hours, SORE)).session.answer == answer
