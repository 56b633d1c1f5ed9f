"""Hours of published agendas in the units of those who published them."""

from fractions import Fraction

from builder.model.exact import places
from builder.model.hours import board_hours
from tests.records.made import BOARD, agenda_of


def test_175_minutes_of_fifty() -> None:
    """175 minutes are 3.5 hours of 50 minutes (21 NCAC 34B .0415)."""
    assert board_hours(agenda_of((1, "09:00", "11:55", "lecture")), BOARD).exact == Fraction(7, 2)


def test_a_sample_day_of_6_75_hours() -> None:
    """An athletic trainers' board prints 1.5 + 2.25 + 3.0 = 6.75 clock hours, breaks and lunch not counted.

    Its printed lunch begins before the lecture ends; lunch is not counted, so the total stands.
    """
    clock = BOARD.model_copy(update={"minutes_in_hour": 60})
    day = agenda_of(
        (1, "08:30", "10:00", "lecture"),
        (1, "10:00", "10:15", "break"),
        (1, "10:15", "12:30", "lecture"),
        (1, "12:15", "13:00", "meal"),
        (1, "14:00", "17:00", "lecture"),
    )
    assert board_hours(day, clock).exact == Fraction(27, 4)


def test_410_minutes_of_fifty() -> None:
    """8:30 to 17:00 less lunch and breaks is 410 minutes, 8.2 hours (a fraud examiners' institute)."""
    day = agenda_of(
        (1, "08:30", "10:30", "lecture"),
        (1, "10:50", "12:30", "lecture"),
        (1, "13:30", "15:00", "lecture"),
        (1, "15:20", "17:00", "lecture"),
    )
    assert places(board_hours(day, BOARD).amount, 2) == "8.20"
