"""A right answer should not be known by its length."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import Asked, asked, shown_options, spoken
from builder.check.wording.words import words_of
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.wording import WordingBook

LEVEL: Level = "advice"
WHY = (
    "Who does not know the answer picks the longest option, and is right too often, since a right answer is "
    "written with more care than the wrong ones."
)
BAD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: A cold pack over a dry cloth for up to 20 minutes, right: yes, because: It eases pain.}
        - {text: Heat, because: It still bleeds.}
        - {text: Kneading, because: It still bleeds.}
    """,
)
GOOD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: A cold pack, right: yes, because: Over a cloth for up to 20 minutes it eases pain.}
        - {text: Heat, because: It still bleeds.}
        - {text: Kneading, because: It still bleeds.}
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Right options that are longer than every wrong one by far, in questions and in visits of cases."""
    for book, question in asked(evidence):
        yield from _told(book, question)
    if (spoken_of := spoken(evidence)) is not None:
        for visit in shown_options(evidence):
            yield from _told(spoken_of, visit)


def _told(book: WordingBook, question: Asked) -> Iterator[Finding]:
    right = [len(words_of(one.text)) for one in question.right]
    wrong = [len(words_of(one.text)) for one in question.wrong]
    if right and wrong and _stands_out(book, min(right), wrong):
        yield Finding(
            question.file,
            question.right[0].path,
            f"The right answer has {min(right)} words, the longest wrong one {max(wrong)}: that shows.",
            "Shorten it, and put the rest into its reason; or write the wrong ones as fully.",
        )


def _stands_out(book: WordingBook, right: int, wrong: Sequence[int]) -> bool:
    limits = book.thresholds
    far = right >= float(limits.longest_ratio.value) * (sum(wrong) / len(wrong))
    return far and right - max(wrong) >= limits.longest_words.value
