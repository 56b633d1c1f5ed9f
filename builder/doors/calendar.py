"""Calendar files by RFC 5545: whole days, without a time zone, the same bytes for the same days."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC, datetime, time, timedelta

from icalendar import Calendar, Event

from builder.model.after import Reminder

MAKER = "-//caseloom//after the course//EN"


def calendar_file(reminders: Iterable[Reminder]) -> bytes:
    """A calendar with a whole-day event for each reminder.

    Each is stamped with its own day, so that the file is the same whenever it is written.
    """
    made = Calendar()
    made.add("prodid", MAKER)
    made.add("version", "2.0")
    made.add("method", "PUBLISH")
    for one in reminders:
        made.add_component(_event(one))
    return bytes(made.to_ical())


def calendar_days(data: bytes) -> list[Reminder]:
    """The whole-day events of a calendar file, in their order."""
    found = Calendar.from_ical(data).walk("VEVENT")
    events = [one for one in found if isinstance(one, Event)]
    return [Reminder(one.uid, one.start, str(one["summary"]), str(one["description"])) for one in events]


def _event(one: Reminder) -> Event:
    event = Event()
    event.add("uid", one.uid)
    event.add("dtstamp", datetime.combine(one.day, time(), UTC))
    event.add("dtstart", one.day)
    event.add("dtend", one.day + timedelta(days=1))
    event.add("summary", one.title)
    event.add("description", one.text)
    event.add("transp", "TRANSPARENT")
    return event
