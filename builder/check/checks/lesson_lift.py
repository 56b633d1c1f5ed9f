"""A question should not repeat a lesson word for word."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import asked
from builder.check.wording.words import words_of
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.place import Path

LEVEL: Level = "advice"
WHY = "Who remembers a sentence of the lesson answers without having understood it; a new case does not."
BAD = Example(
    "questions/cold_time.yml",
    "stem: The client may end the session at any moment and owes nobody what?",
    more=(
        Example(
            "lessons/cold.md",
            "Cold eases pain.\n\nThe client may end the session at any moment and owes nobody a reason.\n",
        ),
    ),
)
GOOD = Example(
    "questions/cold_time.yml",
    "stem: A client says stop and does not say why. What do you owe her?",
    more=BAD.more,
)

Stretch = tuple[str, ...]


def check(evidence: Evidence) -> Iterator[Finding]:
    """Stems and right options that share a long stretch of words with a lesson."""
    known: dict[Stretch, str] = {}
    for book, question in asked(evidence):
        length = int(book.thresholds.lift_words.value)
        known = known or _stretches(evidence.course.lessons, length)
        texts: list[tuple[Path, str]] = [(("stem",), question.stem)]
        texts += [(one.path, one.text) for one in question.right]
        for path, text in texts:
            found = next((one for one in _runs(text, length) if one in known), None)
            if found is not None:
                message = f"“{' '.join(found)}” stands word for word in `lessons/{known[found]}.md`."
                yield Finding(
                    question.file, path, message, "Ask for the same thing in new words, or in a new case."
                )


def _stretches(lessons: dict[str, str], length: int) -> dict[Stretch, str]:
    return {run: name for name, text in lessons.items() for run in _runs(text, length)}


def _runs(text: str, length: int) -> Iterator[Stretch]:
    words = words_of(text)
    return (tuple(words[start : start + length]) for start in range(len(words) - length + 1))
