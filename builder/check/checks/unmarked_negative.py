"""A word that turns a question round should be seen."""

from __future__ import annotations

import re
from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import asked
from builder.check.wording.words import sentences_of, without, without_emphasis
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.wording import WordLists

LEVEL: Level = "advice"
WHY = (
    "A reader in a hurry misses a small “not” and answers the opposite question; the mark then says nothing "
    "about what they know."
)
BAD = Example("questions/cold_time.yml", "stem: Which of these is not fit for a fresh bruise?")
GOOD = Example("questions/cold_time.yml", "stem: Which of these is **not** fit for a fresh bruise?")

_ONLY_TELLS = re.compile(r"(?<=\w) (?:when|if|because|since|while|who|whose)\b.*", re.IGNORECASE)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Stems that ask for what is not so, without emphasis on the word that says it."""
    for book, question in asked(evidence):
        if found := _turned(book.words, question.stem):
            yield Finding(
                question.file,
                ("stem",),
                f"The question is turned round by “{found}”, which is easily missed.",
                f"Ask for what is so; or write `**{found}**`.",
            )


def _turned(words: WordLists, stem: str) -> str | None:
    """The word that turns the question, where it has no emphasis."""
    sentences = sentences_of(stem)
    asking = [one for one in sentences if one.endswith("?")] or sentences[-1:]
    for sentence in asking:
        said = without(_ONLY_TELLS.sub("", without_emphasis(sentence)), words.not_negative).split()
        found = next((word for word in said if word in words.negative or word.endswith(("n't", "n’t"))), None)
        if found:
            return found
    return None
