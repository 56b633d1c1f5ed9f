"""A word of the stem should not lead to the right option."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import Offered, asked
from builder.check.wording.words import stem_of, words_of
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.wording import WordingBook

LEVEL: Level = "advice"
WHY = "A word that stands in the question and in the right option alone is picked for its sound alone."
BAD = Example(
    "questions/cold_time.yml",
    """
    stem: What does lymph drainage help along?
    one:
      options:
        - {text: The flow of lymph, right: yes, because: That is what its name says.}
        - {text: The pulse, because: The heart does that.}
        - {text: Sleep, because: That comes by itself.}
    """,
)
GOOD = Example(
    "questions/cold_time.yml",
    """
    stem: What does lymph drainage help along?
    one:
      options:
        - {text: The way of fluid back to the veins, right: yes, because: That is where it ends.}
        - {text: The beat of the heart at rest, because: The heart does that.}
        - {text: The depth of sleep at night, because: That comes by itself.}
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Telling words of a stem, or forms of them, that stand in a right option and in no wrong one."""
    for book, question in asked(evidence):
        said = _telling(book, [question.stem])
        elsewhere = _telling(book, (one.text for one in question.wrong))
        for one in question.right if question.wrong else ():
            yield from _told(question.file, one, said, elsewhere, _telling(book, [one.text]))


def _told(
    file: str, option: Offered, said: dict[str, str], elsewhere: dict[str, str], own: dict[str, str]
) -> Iterator[Finding]:
    shared = [word for stem, word in own.items() if stem in said and stem not in elsewhere]
    if shared:
        words = "”, “".join(shared)
        message = f"“{words}” stands in the question and in the right option alone."
        yield Finding(
            file, option.path, message, "Say it otherwise, or use the word in wrong options as well."
        )


def _telling(book: WordingBook, texts: Iterable[str]) -> dict[str, str]:
    """The telling words of these texts by what their forms have in common."""
    least, plain = book.thresholds.repeated_letters.value, {stem_of(word) for word in book.words.plain}
    words = (word for text in texts for word in words_of(text) if len(word) >= least and word.isalpha())
    return {stem: word for word in words if (stem := stem_of(word)) not in plain}
