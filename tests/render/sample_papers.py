"""A test with a question of every kind, as the assessing side would hand it over."""

from typing import Any

from builder.model.paper import Paper, PublishedTest
from tests.render.sample_cases import scene


def options(*names: str) -> list[dict[str, Any]]:
    """Options with these words, their ids the words' first letters."""
    return [{"id": f"o{name[:3].lower()}", "title": name} for name in names]


QUESTIONS: list[dict[str, Any]] = [
    {
        "id": "q1",
        "kind": "one",
        "stem": "Which?",
        "scene": scene(),
        "options": options("Cold", "Heat", "Rest"),
    },
    {"id": "q2", "kind": "many", "stem": "Which of these?", "options": options("Pad", "Wrap", "Rub", "Look")},
    {"id": "q3", "kind": "order", "stem": "In what order?", "options": options("First", "Second", "Third")},
    {
        "id": "q4",
        "kind": "match",
        "stem": "What belongs?",
        "options": options("Acute", "Late"),
        "partners": options("Limit", "Restore", "Nothing"),
    },
    {"id": "q5", "kind": "number", "stem": "How long?", "unit": "minutes"},
    {"id": "q6", "kind": "panel", "stem": "What would you do?", "options": options("Wait", "Begin")},
    {"id": "q7", "kind": "text", "stem": "What do you say?", "words": 40},
]


def every_kind() -> PublishedTest:
    """One test with two versions, each with a question of every kind."""
    papers = tuple(
        Paper.model_validate(
            {
                "test": "final",
                "title": "Final test",
                "version": letter,
                "language": "en",
                "questions": [{"hint": "", **one, "id": f"{one['id']}{letter.lower()}"} for one in QUESTIONS],
            }
        )
        for letter in "AB"
    )
    return PublishedTest(test="final", title="Final test", edition="k7q2m9xa", papers=papers)
