"""Quadriceps contusion graded by knee flexion, measured 12 to 24 hours after the injury.

Ryan JB et al., Am J Sports Med 1991;19(3):299-304: over 90 degrees mild, 45 to 90 moderate, under 45 severe.
"""

from decimal import Decimal

import pytest

from builder.model.card import SITES
from builder.model.tables import Severity
from tests.content.library import content, judge

THIGH: dict[str, str | Decimal] = {
    "injury": "contusion",
    "tissue": "muscle",
    "region": "thigh",
    "reinjured": "no",
}


def graded(hours: str, degrees: int, declared: Severity | None = None) -> tuple[tuple[str, ...], bool]:
    """The possible grades of a bruised thigh, and whether the table could tell."""
    values = {**THIGH, "hours": Decimal(hours), "knee_flexion": Decimal(degrees)}
    severity = judge().frame(values, declared, None).severity
    return severity.possible, severity.gradable


@pytest.mark.parametrize(
    ("degrees", "grade"),
    [
        (120, "mild"),
        (91, "mild"),
        (90, "moderate"),
        (89, "moderate"),
        (46, "moderate"),
        (45, "moderate"),
        (44, "severe"),
    ],
)
def test_the_grade_follows_the_published_bounds(degrees: int, grade: str) -> None:
    """91 is mild, 90 and 45 are moderate, 44 is severe (Ryan 1991; exact bounds follow from the ranges)."""
    assert graded("18", degrees) == ((grade,), True)


@pytest.mark.parametrize("hours", ["12", "24"])
def test_both_ends_of_the_window_belong_to_it(hours: str) -> None:
    """The table grades at exactly 12 and exactly 24 hours (Ryan 1991)."""
    assert graded(hours, 91) == (("mild",), True)


@pytest.mark.parametrize("hours", ["6", "11.9", "24.1", "40"])
def test_outside_the_window_nothing_is_graded_and_the_worse_is_taken(hours: str) -> None:
    """A bend of 120 degrees at 6 or 40 hours grades nothing: every grade stays possible (Ryan 1991)."""
    assert graded(hours, 120) == (("mild", "moderate", "severe"), False)
    assert graded(hours, 120, "moderate") == (("moderate", "severe"), False)


def test_a_recorded_first_day_measure_grades_later_on() -> None:
    """A bend written down in the window still grades at day nine (Ryan 1991)."""
    values = {**THIGH, "hours": Decimal(216), "knee_flexion_first_day": Decimal(45)}
    severity = judge().frame(values, None, None).severity
    assert (severity.possible, severity.gradable) == (("moderate",), True)


def test_the_table_names_its_source() -> None:
    """The shipped table rests on Ryan 1991 and nothing else."""
    assert content().severity.tables["thigh_contusion"].source == ("ryan1991",)


def test_a_severe_contusion_bars_hands_on_work_on_the_injury() -> None:
    """At 44 degrees no hands-on card is open on the injury when acute (Ryan 1991: poorest outlook)."""
    values = {**THIGH, "hours": Decimal(18), "knee_flexion": Decimal(44), "consent": "yes"}
    frame = judge().frame(values, None, None)
    for card in content().cards.values():
        if card.hands_on:
            usual = {name: value for name, value in card.usual.items() if name != "site"}
            assert judge().options.judge(frame, card, SITES[0], usual).at_worst != "ok", card.id
