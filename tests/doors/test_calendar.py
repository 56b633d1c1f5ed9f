"""Calendar files: what RFC 5545 (Desruisseaux, 2009) asks of them."""

from datetime import date

from hypothesis import given
from hypothesis import strategies as st

from builder.doors.calendar import calendar_days, calendar_file
from builder.model.after import Reminder

PLAIN = st.text(st.characters(codec="utf-8", categories=("L", "N", "P", "Zs")), min_size=1, max_size=200)
REMINDERS = st.builds(
    Reminder, st.just("k-20260419-day@caseloom"), st.dates(date(2000, 1, 1), date(2100, 1, 1)), PLAIN, PLAIN
)


def test_a_day_is_a_whole_day_without_a_zone() -> None:
    """A date without a time, its end the day after; nobody is shown as busy."""
    one = Reminder("k@caseloom", date(2026, 2, 28), "Soft tissue; one day after", "Open, and go on.\nNow.")
    lines = calendar_file([one]).decode("utf-8").split("\r\n")
    assert "DTSTART;VALUE=DATE:20260228" in lines
    assert "DTEND;VALUE=DATE:20260301" in lines
    assert "SUMMARY:Soft tissue\\; one day after" in lines
    assert "DESCRIPTION:Open\\, and go on.\\nNow." in lines
    assert "TRANSP:TRANSPARENT" in lines


@given(st.lists(REMINDERS, max_size=4))
def test_a_file_is_read_back_as_it_was_written(reminders: list[Reminder]) -> None:
    """Lines end in CRLF and hold 75 octets at most (section 3.1); the same days give the same bytes."""
    data = calendar_file(reminders)
    assert data.endswith(b"\r\n")
    assert b"\n" not in data.replace(b"\r\n", b"")
    assert max(map(len, data.split(b"\r\n"))) <= 75
    assert calendar_days(data) == reminders
    assert calendar_file(reminders) == data
