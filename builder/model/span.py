"""A span of time in words that keep every hour: the end of a phase can be told from the hour after it."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

DAY = 24
COUNTED_IN_HOURS = 72


def exact_span(words: Mapping[str, str], hours: Decimal) -> str:
    """A span in hours up to three days, then in days with what is left in hours; `words` are the course's."""
    if hours < COUNTED_IN_HOURS:
        return _counted(words, "hour", hours)
    days, left = divmod(hours, DAY)
    if not left:
        return _counted(words, "day", days)
    parts = {"days": _counted(words, "day", days), "hours": _counted(words, "hour", left)}
    return words["q_days_and_hours"].format(**parts)


def _counted(words: Mapping[str, str], unit: str, count: Decimal) -> str:
    return words[f"q_{unit}" if count == 1 else f"q_{unit}s"].format(count=f"{count.normalize():f}")
