"""Words that leave no exception should not tell right from wrong."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import Offered, asked
from builder.check.wording.together import takes_others
from builder.check.wording.words import holds, without, words_of
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.wording import WordLists

LEVEL: Level = "advice"
WHY = (
    "In care hardly anything is always or never so. Readers know it, strike out such options, and find the "
    "right one without knowing why."
)
BAD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: It may ease pain, right: yes, because: That is what it is for.}
        - {text: It always heals, because: It does not heal.}
        - {text: It never burns, because: It can freeze the skin.}
    """,
)
GOOD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: It eases pain, right: yes, because: That is what it is for.}
        - {text: It heals faster, because: It does not heal.}
        - {text: It warms the skin, because: It can freeze the skin.}
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Questions whose wrong options hold absolute words and whose right ones hold none, or the reverse."""
    for book, question in asked(evidence):
        right = [one for one in question.right if _absolute(book.words, one)]
        wrong = [one for one in question.wrong if _absolute(book.words, one)]
        told = wrong if not right and len(wrong) >= book.thresholds.absolute_wrong.value else right
        if told and question.right and (not right or not wrong):
            words = "”, “".join(dict.fromkeys(word for one in told for word in _absolute(book.words, one)))
            side = "right" if right else "wrong"
            yield Finding(
                question.file,
                told[0].path,
                f"Only {side} options say “{words}”: that tells them from the others.",
                "Take the words out, or let right and wrong options have them alike.",
            )


def _absolute(words: WordLists, option: Offered) -> list[str]:
    """The absolute words of an option; none in an option of one word, which is a value, or of others."""
    if len(words_of(option.text)) == 1 or takes_others(words, option.text):
        return []
    return holds(without(option.text, words.harmless), words.absolute)
