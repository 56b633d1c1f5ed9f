"""Where the pages for the time after the course stand."""

from __future__ import annotations

from builder.model.after import Interval

AFTER = "after/index.md"
OWN_SHEET = "after/my-sheet.md"
CHANGES = "after/my-changes.md"
SCRIPT = "assets/after.js"
_NAMES = {"day": "one-day", "week": "one-week", "month": "one-month", "quarter": "three-months"}


def of_interval(interval: Interval) -> str:
    """The page of what to come back to after an interval."""
    return f"after/{_NAMES[interval.id]}.md"
