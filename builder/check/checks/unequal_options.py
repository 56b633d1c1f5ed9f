"""The options of a question should be of one sort and size."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import Asked, asked
from builder.check.wording.numbers import TIME, span_of
from builder.check.wording.words import words_of
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.wording import WordingBook

LEVEL: Level = "advice"
WHY = (
    "An option of another sort or size than the rest is struck out, or chosen, for that alone, and the "
    "question asks less than it seems to."
)
BAD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: 20 minutes, right: yes, because: The skin is looked at after that.}
        - {text: 15 kg, because: That is a weight.}
        - {text: blue, because: That is a colour.}
    """,
)
GOOD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: 20 minutes, right: yes, because: The skin is looked at after that.}
        - {text: 60 minutes, because: The skin may freeze.}
        - {text: 90 minutes, because: The skin may freeze.}
    """,
)

_OF_TIME = frozenset(
    "second minute hour day week month year morning noon evening night today tomorrow".split()  # noqa: SIM905 - a row of words
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Questions that mix quantities with words or with each other, or whose wrong options are far longer."""
    for book, question in asked(evidence):
        message = _mixed(question) or _too_long(book, question)
        if message:
            path = question.options[0].path[:2]
            yield Finding(question.file, path, message, "Write options of one sort and of about one length.")


def _mixed(question: Asked) -> str | None:
    spans = {one.text: span for one in question.options if (span := span_of(one.text)) is not None}
    dimensions = {span.dimension for span in spans.values()}
    if len(dimensions) > 1:
        return (
            "The options are quantities of different sorts: " + ", ".join(f"“{one}”" for one in spans) + "."
        )
    words = [one.text for one in question.options if one.text not in spans and not _has_number(one.text)]
    if not spans or not words or (dimensions == {TIME} and any(_is_of_time(one) for one in words)):
        return None
    return f"“{next(iter(spans))}” is a quantity and “{words[0]}” is not."


def _has_number(text: str) -> bool:
    return any(letter.isdigit() for letter in text) or any(span_of(word) for word in words_of(text))


def _is_of_time(text: str) -> bool:
    return any(word.removesuffix("s") in _OF_TIME for word in words_of(text))


def _too_long(book: WordingBook, question: Asked) -> str | None:
    wrong = max(((len(words_of(one.text)), one.text) for one in question.wrong), default=(0, ""))
    least = min((len(words_of(one.text)) for one in question.options), default=0)
    limits = book.thresholds
    if wrong[0] < limits.unequal_words.value or wrong[0] <= limits.unequal_ratio.value * least:
        return None
    return f"“{wrong[1]}” has {wrong[0]} words, the shortest option {least}."
