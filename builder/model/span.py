"""A span of time in words that keep every hour: the end of a phase can be told from the hour after it."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from builder.model.words import said

DAY = 24
COUNTED_IN_HOURS = 72


def exact_span(words: Mapping[str, str], hours: Decimal) -> str:
    """A span in hours up to three days, then in days with what is left in hours; `words` are the course's."""
    if hours < COUNTED_IN_HOURS:
        return _counted(words, "hours", hours)
    days, left = divmod(hours, DAY)
    if not left:
        return _counted(words, "days", days)
    parts = {"days": _counted(words, "days", days), "hours": _counted(words, "hours", left)}
    return words["q_days_and_hours"].format(**parts)


def _counted(words: Mapping[str, str], unit: str, count: Decimal) -> str:
    return said(words, f"q_{unit}", n=f"{count.normalize():f}")
