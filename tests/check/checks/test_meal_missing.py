"""A long day has a meal."""

import pytest

from builder.check.checks.meal_missing import check
from tests.check.checks.test_agenda_times import item
from tests.check.small_course import evidence


@pytest.mark.parametrize(("end", "told"), [("15:00", 0), ("15:01", 1), ("17:00", 1)])
def test_more_than_six_hours_ask_for_a_meal(end: str, told: int) -> None:
    """Exactly six hours do not."""
    found = list(check(evidence(agenda=[item(1, "09:00", "12:00", "A"), item(1, "12:00", end, "B")])))
    assert len(found) == told
    assert all(one.path == ("agenda", 0) for one in found)


def test_a_day_with_a_meal_is_silent() -> None:
    """Each day has its own; a meal on the first feeds nobody on the second."""
    meal = {**item(1, "12:00", "13:00", "Meal"), "kind": "meal"}
    days = [
        item(1, "09:00", "12:00", "A"),
        meal,
        item(1, "13:00", "17:00", "B"),
        item(2, "09:00", "16:30", "C"),
    ]
    (found,) = check(evidence(agenda=days))
    assert found.message == "Day 2 lasts 7 h 30 min and has no meal."
