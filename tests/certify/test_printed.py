"""What a certificate says."""

from datetime import date

import pytest

from builder.certify.printed import kind, printed
from builder.model.records import Basis, Decision, Requirement, RequirementKind, Terms
from tests.records.made import BOARD, COURSE, agenda_of, folder, terms

SPRING = folder().model_copy(
    update={"taught": folder().taught.model_copy(update={"dates": (date(2026, 6, 7), date(2026, 6, 6))})}
)


def decision(*kinds: RequirementKind) -> Decision:
    """A decision with these requirements, all met."""
    found = tuple(Requirement(kind=one, name="x", met=True, reason="Seen.") for one in kinds)
    basis = Basis(sheets=(), keys=(), terms="t", evidence="e")
    return Decision(course="falls", klass="spring", code="A", attempts=(), requirements=found, basis=basis)


def said(given: Terms) -> dict[str, str]:
    """What a certificate of the spring class says under these terms."""
    return printed(given, SPRING, decision("test"), date(2026, 6, 9))


def test_title_number_and_approval_are_exactly_those_of_the_files() -> None:
    """Not one character is changed on the way."""
    made = said(terms(title="Falls  and – Landings", number="0017"))
    assert (made["course"], made["course number"]) == ("Falls  and – Landings", "0017")


def test_a_class_is_complete_on_its_last_day() -> None:
    """First and last day are found among the dates, in whatever order they stand."""
    made = said(terms())
    assert (made["first day"], made["last day"], made["completed"]) == (
        "2026-06-06",
        "2026-06-07",
        "2026-06-07",
    )
    assert made["issued"] == "2026-06-09"


@pytest.mark.parametrize(
    ("end", "unit", "hours"),
    [("11:55", 50, "3.50"), ("10:40", 60, "1.66"), ("10:00", 60, "1.00"), ("16:15", 60, "7.25")],
)
def test_hours_are_in_the_board_s_unit_and_cut(end: str, unit: int, hours: str) -> None:
    """Hours have two decimals and never claim more than was taught."""
    board = BOARD.model_copy(update={"minutes_in_hour": unit})
    agenda = agenda_of((1, "09:00", end, "lecture"))
    made = said(Terms(course=COURSE.model_copy(update={"agenda": agenda}), boards=(board,)))
    assert made["hours"] == hours
    assert made["hour unit"] == "hours of 50 minutes"


def test_other_boards_hours_stand_beside() -> None:
    """A course for two boards names each one's hours with its unit."""
    other = BOARD.model_copy(update={"name": "Guild", "hour_name": "clock hours", "minutes_in_hour": 60})
    made = said(terms().model_copy(update={"boards": (BOARD, other)}))
    assert (made["hours"], made["other hours"]) == ("6.00", "5.00 (clock hours, Guild)")


def test_achievement_is_for_a_test_that_was_passed() -> None:
    """Attendance alone is completion."""
    assert kind(decision("test", "attendance")) == "achievement"
    assert kind(decision("attendance")) == "completion"
