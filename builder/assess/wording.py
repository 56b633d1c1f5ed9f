"""The words of questions: ids of `content/words.yml` filled in, spans of time, short citations."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal

from builder.model.library import Content

DAY = 24
COUNTED_IN_HOURS = 72


def say(content: Content, key: str, **parts: str) -> str:
    """The words with the id `q_<key>`, their gaps filled."""
    return content.words[f"q_{key}"].format(**parts)


def span(content: Content, hours: Decimal) -> str:
    """A span of time: in hours up to three days, then in days with what is left in hours."""
    if hours < COUNTED_IN_HOURS:
        return _counted(content, "hour", hours)
    days, left = divmod(hours, DAY)
    if not left:
        return _counted(content, "day", days)
    return say(
        content,
        "days_and_hours",
        days=_counted(content, "day", days),
        hours=_counted(content, "hour", left),
    )


def _counted(content: Content, unit: str, count: Decimal) -> str:
    return say(content, unit if count == 1 else f"{unit}s", count=f"{count.normalize():f}")


def citations(content: Content, sources: Iterable[str]) -> str:
    """The named sources, each cited shortly and once."""
    return "; ".join(dict.fromkeys(_short(content, one) for one in sources))


def _short(content: Content, source: str) -> str:
    reference = content.references.sources.get(source)
    return source if reference is None else reference.short
