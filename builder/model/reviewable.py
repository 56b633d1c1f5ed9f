"""All of the content that a clinician is to review, part by part, as a course's signatures name it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from builder.model.library import Content
from builder.model.review import R, Reviewable, ReviewBook, Signed, signed

WHOLE = "all"
NAMES = {
    "rules": "rule",
    "cards": "card",
    "phases": "the phases with their calendar and signs",
    "severity": "severity table",
    "background": "background list",
}


def reviewable(content: Content) -> dict[str, Mapping[str, Reviewable]]:
    """Every part by its name in `reviews.yml`, each by id; the clocks and signs of phases are one."""
    return {
        "rules": content.rules,
        "cards": content.cards,
        "phases": {WHOLE: content.phases},
        "severity": content.severity.tables,
        "background": content.severity.background,
    }


def unsigned(content: Content) -> dict[str, int]:
    """How many of each part no clinician has reviewed; parts that are done are left out."""
    parts = reviewable(content).items()
    counted = {part: sum(one.reviewed is None for one in nouns.values()) for part, nouns in parts}
    return {part: count for part, count in counted.items() if count}


def unsigned_words(counted: Mapping[str, int]) -> str:
    """The counts in words, such as `2 rules, 1 card, the phases`."""
    words = (_counted(part, count) for part, count in counted.items())
    return ", ".join(words)


def _counted(part: str, count: int) -> str:
    if part == "phases":
        return NAMES[part]
    return f"{count} {NAMES[part]}{'' if count == 1 else 's'}"


def signed_content(content: Content, book: ReviewBook | None) -> Content:
    """The content with every signature that holds for what stands there now."""
    if book is None:
        return content
    severity = {
        "tables": _signed(content.severity.tables, book.severity),
        "background": _signed(content.severity.background, book.background),
    }
    return replace(
        content,
        rules=_signed(content.rules, book.rules),
        cards=_signed(content.cards, book.cards),
        phases=signed(content.phases, book.phases.get(WHOLE)),
        severity=content.severity.model_copy(update=severity),
    )


def _signed(nouns: Mapping[str, R], signatures: Mapping[str, Signed]) -> dict[str, R]:
    return {name: signed(noun, signatures.get(name)) for name, noun in nouns.items()}
