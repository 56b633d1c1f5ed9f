"""The hours of a course, line by line."""

from datetime import date, timedelta
from fractions import Fraction

import pytest

from builder.fault import Fault
from builder.flow.explain_hours import OLD_DAYS, explain_hours
from builder.model.board import BoardRules
from tests.demo.built import opened

READ = date(2026, 11, 25)


def boards() -> dict[str, BoardRules]:
    """The shipped boards."""
    course = opened().course
    assert course is not None
    return dict(course.content.boards)


def test_the_sum_is_shown_line_by_line() -> None:
    """Every item of the agenda with its minutes and whether it counts, the days, and what comes of them."""
    text = "\n".join(explain_hours(opened(), None, READ)[0])
    assert "09:00-10:30   90 min  lecture     How soft tissue heals" in text
    assert "12:15-13:15   60 min  meal        Midday meal  not counted" in text
    assert "Together 12 contact hours" in text
    assert "READ AGAIN" not in text


def test_the_days_add_up_to_what_is_printed() -> None:
    """For every board the data's days are its exact amount, and no line is wider than a terminal."""
    for name, board in boards().items():
        lines, data = explain_hours(opened(), name, READ)
        (told,) = data["hours"]
        together = sum(Fraction(day["hours"]) for day in told["days"])
        assert together / board.hours_in_unit == Fraction(told["exact"])
        assert max(map(len, lines)) <= 100
        assert board.note.split(".")[0] in " ".join(" ".join(lines).split())


def test_rules_read_long_ago_are_to_be_read_again() -> None:
    """A year is still fresh, a day more is not."""
    for days, again in ((OLD_DAYS, False), (OLD_DAYS + 1, True)):
        text = "\n".join(explain_hours(opened(), "generic", READ + timedelta(days=days))[0])
        assert ("READ AGAIN" in text) == again


def test_a_limit_that_held_is_said() -> None:
    """Where the clock gives less than the unit, the line says so; a rounded amount gives the exact one."""
    assert "held to the hours of the clock" in "\n".join(explain_hours(opened(), "florida_massage", READ)[0])
    assert "to the nearest to" not in "\n".join(explain_hours(opened(), "generic", READ)[0])


def test_a_board_without_rules_is_no_board() -> None:
    """A name that is no board's is told with the nearest."""
    with pytest.raises(Fault, match="generik"):
        explain_hours(opened(), "generik", READ)
