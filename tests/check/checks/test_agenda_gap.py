"""No minutes of the agenda belong to nothing."""

from builder.check.checks.agenda_gap import check
from tests.check.checks.test_agenda_times import item
from tests.check.small_course import evidence


def told(*agenda: dict[str, object]) -> list[tuple[object, str]]:
    """Where and what is said of an agenda."""
    return [(one.path, one.message) for one in check(evidence(agenda=list(agenda)))]


def test_items_that_touch_are_silent() -> None:
    """In any order of the list, over two days, and where one lies inside another."""
    assert (
        told(item(1, "10:00", "11:00", "B"), item(1, "09:00", "10:00", "A"), item(2, "14:00", "15:00", "C"))
        == []
    )
    assert (
        told(item(1, "09:00", "12:00", "A"), item(1, "09:30", "10:00", "B"), item(1, "12:00", "13:00", "C"))
        == []
    )


def test_time_without_a_plan_is_told() -> None:
    """With both of its ends and what came before."""
    assert told(item(1, "10:15", "11:00", "B"), item(1, "09:00", "10:00", "A")) == [
        (("agenda", 0, "start"), "Nothing is planned from 10:00, after `A`, to 10:15.")
    ]
