"""The words of questions: ids of `content/words/en.yml` filled in, spans of time, short citations."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal

from builder.model.library import Content
from builder.model.span import exact_span
from builder.model.words import said


def say(content: Content, key: str, **parts: str) -> str:
    """The words with the id `q_<key>`, their gaps filled."""
    return said(content.words, f"q_{key}", **parts)


def span(content: Content, hours: Decimal) -> str:
    """A span of time that keeps every hour."""
    return exact_span(content.words, hours)


def citations(content: Content, sources: Iterable[str]) -> str:
    """The named sources, each cited shortly and once."""
    return "; ".join(dict.fromkeys(_short(content, one) for one in sources))


def _short(content: Content, source: str) -> str:
    reference = content.references.sources.get(source)
    return source if reference is None else reference.short
