"""Presence is counted in exact minutes of what a board counts."""

from datetime import date, datetime
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.fault import Fault
from builder.grade.attendance import attendance_requirement, counted_spans, minutes, present, shared
from builder.model.records import ClassFolder, Requirement
from builder.model.taught import Presence
from tests.records.made import AGENDA, BOARD, agenda_of, folder, person, presence

ANN = person(1, "A", "B")
NINETY = Fraction(9, 10)
WHOLE_DAY = agenda_of((1, "09:00", "17:00", "lecture"))


def judged(*rows: Presence, needed: Fraction = NINETY, **changed: object) -> Requirement:
    """Whether Ann was there for enough of the usual day."""
    return attendance_requirement(AGENDA, BOARD, needed, there(*rows, **changed), ANN)


def there(*rows: Presence, **changed: object) -> ClassFolder:
    """A class of Ann alone with these rows of presence, its own fields changed."""
    spring = folder(ANN, presences=rows)
    return spring.model_copy(update={"taught": spring.taught.model_copy(update=changed)})


@pytest.mark.parametrize(
    ("arrived", "left", "met", "reason"),
    [
        ("08:00", "18:00", True, "300 of 300 counted minutes, 100 %; 90 % is needed."),
        ("09:30", "15:00", True, "270 of 300 counted minutes, 90 %; 90 % is needed."),
        ("09:31", "15:00", False, "269 of 300 counted minutes, 89.666 %; 90 % is needed."),
        ("12:00", "13:00", False, "0 of 300 counted minutes, 0 %; 90 % is needed."),
        ("15:00", "09:00", False, "0 of 300 counted minutes, 0 %; 90 % is needed."),
    ],
)
def test_minutes_are_exact(arrived: str, left: str, met: bool, reason: str) -> None:  # noqa: FBT001
    """Early and late stay count nothing, nor does the meal; one minute decides."""
    found = judged(presence(ANN, arrived, left))
    assert (found.met, found.reason) == (met, reason)


@pytest.mark.parametrize(
    ("missed", "share", "met"), [(45, "90.625 %", True), (48, "90 %", True), (49, "89.791 %", False)]
)
def test_of_eight_hours_48_minutes_may_be_missed(missed: int, share: str, met: bool) -> None:  # noqa: FBT001
    """Of 480 minutes, 432 pass a rule of 90 % and 431 do not (worked example of our own)."""
    spring = there(presence(ANN, f"09:{missed}", "17:00"))
    found = attendance_requirement(WHOLE_DAY, BOARD, NINETY, spring, ANN)
    assert found.met is met
    assert share in found.reason


def test_going_out_and_coming_back_is_two_rows() -> None:
    """Rows add up, under either code; where they overlap no minute counts twice."""
    rows = (presence(ANN, "09:00", "11:00"), presence(ANN, "10:00", "12:00"), presence(ANN, "13:00", "14:30"))
    second = rows[2].model_copy(update={"code": ANN.codes[1]})
    assert judged(*rows[:2], second).reason.startswith("270 of 300")


def test_the_stricter_of_course_and_board_decides() -> None:
    """A board's floor holds where the course asks less, and the course where it asks more."""
    half = presence(ANN, "09:00", "11:24")
    assert "50 % is needed" in judged(half, needed=Fraction(0)).reason
    assert not judged(half, needed=Fraction(0)).met
    assert "90 % is needed" in judged(half).reason


def test_times_with_an_offset_are_taken_at_their_word() -> None:
    """In at 8:00 -05:00 and out at 17:00 -04:00 is eight hours, not nine."""
    row = Presence(
        code=ANN.code,
        day=1,
        arrived=datetime.fromisoformat("2026-03-08T08:00:00-05:00"),
        left=datetime.fromisoformat("2026-03-08T17:00:00-04:00"),
    )
    assert minutes(present(there(row), ANN)) == 480


def test_a_night_in_which_the_clock_changes_is_as_long_as_it_was() -> None:
    """From 1:00 to 4:00 on the day clocks go forward in New York are two hours."""
    night = agenda_of((1, "01:00", "04:00", "lecture"))
    assert minutes(counted_spans(night, BOARD, there(dates=(date(2026, 3, 8),)).taught)) == 120


def test_without_counted_minutes_a_share_cannot_be_met() -> None:
    """A course that asks for presence and has no agenda certifies nobody; one that asks none does."""
    empty = BOARD.model_copy(update={"attendance_floor": Fraction(0)})
    spring = there(presence(ANN))
    assert not attendance_requirement((), empty, NINETY, spring, ANN).met
    assert attendance_requirement((), empty, Fraction(0), spring, ANN).met


def test_an_agenda_longer_than_the_class_is_a_fault() -> None:
    """A second day without a date cannot be counted."""
    with pytest.raises(Fault, match="has a day 2"):
        counted_spans(agenda_of((2, "09:00", "10:00", "lecture")), BOARD, folder().taught)


moments = st.integers(0, 24 * 60 - 1).map(lambda at: f"{at // 60:02d}:{at % 60:02d}")


@given(st.lists(st.tuples(moments, moments), max_size=4), st.tuples(moments, moments))
def test_more_presence_never_counts_less(rows: list[tuple[str, str]], more: tuple[str, str]) -> None:
    """Another row never takes minutes away, and none count beyond the agenda."""
    counted = counted_spans(AGENDA, BOARD, folder().taught)
    told = [presence(ANN, *row) for row in rows]
    some = minutes(shared(counted, present(there(*told), ANN)))
    assert some <= minutes(shared(counted, present(there(*told, presence(ANN, *more)), ANN))) <= 300
