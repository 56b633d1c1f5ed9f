"""Hours of an agenda, minutes of study, and spans of time made one."""

from decimal import Decimal
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.fault import Fault
from builder.model.board import BoardRules
from builder.model.course import AgendaItem
from builder.model.hours import board_hours, merged, study_minutes, zone_of
from tests.records.made import BOARD, GOLDEN_DAY, agenda_of

ALL_KINDS = ("lecture", "hands_on", "test", "evaluation")


@pytest.mark.parametrize(
    ("kinds", "unit", "hours"),
    [
        (ALL_KINDS, 60, Fraction(29, 4)),
        (ALL_KINDS, 50, Fraction(87, 10)),
        (("hands_on",), 60, Fraction(21, 4)),
        ((*ALL_KINDS, "break"), 60, Fraction(31, 4)),
    ],
)
def test_one_agenda_has_many_hours(kinds: tuple[str, ...], unit: int, hours: Fraction) -> None:
    """What a board counts and how long its hour is decide; the golden day is our own."""
    board = BOARD.model_copy(update={"counted": kinds, "minutes_in_hour": unit})
    assert board_hours(GOLDEN_DAY, board).exact == hours


def minutes_of(agenda: tuple[AgendaItem, ...], board: BoardRules) -> int:
    """The minutes of an agenda that count."""
    return board_hours(agenda, board).minutes


def test_overlapping_items_count_once() -> None:
    """No minute counts twice, on one day; the same time of another day does."""
    twice = agenda_of((1, "09:00", "10:00", "lecture"), (1, "09:30", "10:30", "hands_on"))
    assert minutes_of(twice, BOARD) == 90
    assert minutes_of((*twice, *agenda_of((2, "09:00", "10:00", "lecture"))), BOARD) == 150


def test_an_item_that_ends_before_it_starts_counts_nothing() -> None:
    """A mistyped item never takes minutes from others."""
    agenda = agenda_of((1, "10:00", "09:00", "lecture"), (1, "11:00", "12:00", "lecture"))
    assert minutes_of(agenda, BOARD) == 60


@given(st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40))))
def test_merged_spans_cover_the_same_moments(spans: list[tuple[int, int]]) -> None:
    """Merging keeps every moment, and leaves spans in order that do not touch."""
    whole = merged(spans)
    assert {t for a, b in whole for t in range(a, b)} == {t for a, b in spans for t in range(a, b)}
    assert all(one[1] < other[0] for one, other in pairwise(whole))


def test_study_time_is_never_negative() -> None:
    """The formula is clamped at nothing for tiny texts."""
    assert study_minutes(500, 2, Decimal(1)) == 0


def test_a_zone_is_known_by_name() -> None:
    """A name that is no time zone is a fault with its remedy."""
    assert zone_of("America/New_York").key == "America/New_York"
    for name in ("Lanternfall/Tent", "../etc/passwd", "", "America"):
        with pytest.raises(Fault, match="no time zone"):
            zone_of(name)
