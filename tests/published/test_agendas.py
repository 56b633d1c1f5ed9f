"""Two days of our own by every shipped board, and a published day that does not add up.

The days are ours; the units, what counts, caps and roundings are those of the boards' files, each with its
source. What of a body's rules was not seen is left out of the hours, so that none is claimed too many.
"""

from datetime import time
from fractions import Fraction
from itertools import pairwise

import pytest

from builder.model.course import AgendaItem
from builder.model.hours import board_hours
from tests.judge.laws import shipped_world
from tests.records.made import BOARD, GOLDEN_DAY, agenda_of

BOARDS = shipped_world().content.boards
B = agenda_of(
    (2, "08:30", "08:45", "lecture"),
    (2, "08:45", "10:15", "hands_on"),
    (2, "10:15", "10:30", "break"),
    (2, "10:30", "12:00", "lecture"),
    (2, "12:00", "13:00", "meal"),
    (2, "13:00", "14:30", "test"),
    (2, "14:30", "14:45", "break"),
    (2, "14:45", "15:15", "test"),
    (2, "15:15", "15:30", "sales"),
    (2, "15:30", "16:00", "evaluation"),
)
HOURS = {
    "generic": ("7", "5.25", "12.25"),
    "ceu_standard": ("0.7", "0.6", "1.3"),
    "massage_national": ("7.5", "5.75", "13.25"),
    "texas_massage": ("8.4", "6.3", "14.7"),
    "florida_massage": ("7.5", "5.75", "13.25"),
    "georgia_massage": ("7", "5.25", "12.25"),
    "north_carolina_massage": ("7.5", "5.75", "13.25"),
    "british_columbia_massage": ("6.75", "3.25", "10"),
}
TAUGHT = ("lecture", "hands_on", "test")


def test_every_shipped_board_is_tried() -> None:
    """No board comes without hours worked out by hand."""
    assert HOURS.keys() == BOARDS.keys()


@pytest.mark.parametrize("name", HOURS)
def test_two_days_by_every_board(name: str) -> None:
    """The first day, the second, and both, in the board's own unit and rounding."""
    worked = [board_hours(agenda, BOARDS[name]).amount for agenda in (GOLDEN_DAY, B, (*GOLDEN_DAY, *B))]
    assert worked == [Fraction(one) for one in HOURS[name]]


@pytest.mark.parametrize(
    ("kinds", "unit", "first", "second"),
    [
        ((*TAUGHT, "evaluation"), 60, "7.25", "5.75"),
        (TAUGHT, 60, "7", "5.25"),
        ((*TAUGHT, "evaluation"), 50, "8.7", "6.9"),
        (TAUGHT, 50, "8.4", "6.3"),
    ],
)
def test_with_and_without_evaluation(kinds: tuple[str, ...], unit: int, first: str, second: str) -> None:
    """The same days at sixty and fifty minutes; selling is never counted."""
    board = BOARD.model_copy(update={"counted": kinds, "minutes_in_hour": unit})
    assert [board_hours(day, board).exact for day in (GOLDEN_DAY, B)] == [Fraction(first), Fraction(second)]


def test_hands_on_share_with_and_without_evaluation() -> None:
    """315 of 435 minutes are 72.4 %, of 420 minutes 75 %: what is counted decides."""
    wide = BOARD.model_copy(update={"counted": (*TAUGHT, "evaluation")})
    assert board_hours(GOLDEN_DAY, wide).hands_on == Fraction(315, 435)
    assert board_hours(GOLDEN_DAY, BOARD).hands_on == Fraction(3, 4)
    asked = BOARDS["georgia_massage"].hands_on_share
    assert asked is not None
    assert board_hours(B, BOARDS["georgia_massage"]).hands_on < asked <= Fraction(3, 4)


def test_the_national_body_never_gives_more_than_the_clock_less_meals() -> None:
    """At most 8.0 for the first day, whose 30 minutes of break are within the 80 that eight hours allow."""
    day = board_hours(GOLDEN_DAY, BOARDS["massage_national"]).days[0]
    assert day.breaks == 30
    assert day.hours <= Fraction(540 - 60, 60)


def test_breaks_beyond_the_allowance_do_not_count() -> None:
    """Ten minutes for each fifty taught: an hour and a half of break after 100 minutes counts for twenty."""
    idle = agenda_of((1, "09:00", "10:40", "lecture"), (1, "10:40", "12:10", "break"))
    assert board_hours(idle, BOARDS["massage_national"]).amount == 2


def test_a_day_is_capped_where_it_is_asked() -> None:
    """British Columbia: nine hours of instruction in a day are seven credits."""
    long = agenda_of((1, "08:00", "17:00", "hands_on"), (2, "08:00", "10:00", "hands_on"))
    made = board_hours(long, BOARDS["british_columbia_massage"])
    assert made.amount == 9
    assert made.days[0].held == "day"


def test_the_published_day_that_does_not_add_up() -> None:
    """An athletic trainers' board prints a lunch from 12:15 inside a lecture until 12:30 and 6.75 hours.

    Its own sum, 1.5 + 2.25 + 3.0, holds only if lunch starts at 12:30; with a lecture to 12:15 it is 6.5.
    """
    clock = BOARD.model_copy(update={"minutes_in_hour": 60})
    ends, totals = ("12:30", "12:15"), ("6.75", "6.5")
    for end, total in zip(ends, totals, strict=True):
        assert board_hours(sample_day(end), clock).exact == Fraction(total)
    assert [overlap(one, other) for one, other in pairwise(sample_day("12:30"))].count(15) == 1
    assert not any(overlap(one, other) for one, other in pairwise(sample_day("12:15")))


def sample_day(lecture_ends: str) -> tuple[AgendaItem, ...]:
    """The published day, its second lecture ending as given."""
    return agenda_of(
        (1, "08:00", "08:30", "sign_in"),
        (1, "08:30", "10:00", "lecture"),
        (1, "10:00", "10:15", "break"),
        (1, "10:15", lecture_ends, "lecture"),
        (1, "12:15", "13:00", "meal"),
        (1, "13:00", "14:00", "sales"),
        (1, "14:00", "17:00", "lecture"),
    )


def overlap(one: AgendaItem, other: AgendaItem) -> int:
    """By how many minutes an item begins before the one before it ends."""
    return max(0, _minute(one.end) - _minute(other.start))


def _minute(at: time) -> int:
    return at.hour * 60 + at.minute


@pytest.mark.parametrize(
    ("hours", "units"),
    [("0.5", "0.1"), ("2.5", "0.3"), ("6.75", "0.7"), ("12", "1.2"), ("36", "3.6"), ("10", "1")],
)
def test_hours_as_units_of_ten(hours: str, units: str) -> None:
    """To the nearest tenth, a half upwards: 2.5 hours are 0.3, 36 hours 3.6 (IACET; Iowa nursing)."""
    assert board_hours(lasting(hours), BOARDS["ceu_standard"]).amount == Fraction(units)


def test_less_than_a_tenth_is_nothing() -> None:
    """Twenty minutes are 0.033 units, less than the least that is given (IACET)."""
    assert board_hours(lasting("0.3"), BOARDS["ceu_standard"]).amount == 0


def lasting(hours: str) -> tuple[AgendaItem, ...]:
    """Lectures of so many hours, at most six a day."""
    items: list[AgendaItem] = []
    left, day = int(Fraction(hours) * 60), 1
    while left > 0:
        minutes = min(left, 360)
        items += agenda_of((day, "08:00", f"{8 + minutes // 60:02}:{minutes % 60:02}", "lecture"))
        left, day = left - minutes, day + 1
    return tuple(items)


def test_what_a_college_credit_is_worth() -> None:
    """One semester credit is 15 hours in Texas and 21 in North Carolina; 0.1 of a unit is one hour."""
    assert BOARDS["texas_massage"].semester_hours == 15
    assert BOARDS["texas_massage"].quarter_hours == 10
    assert BOARDS["north_carolina_massage"].semester_hours == 21
    assert BOARDS["ceu_standard"].hours_in_unit == 10
    assert "CEU" in BOARDS["massage_national"].never_called
