"""The grammar of a stem should fit every option."""

from __future__ import annotations

import re
from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import Asked, asked
from builder.check.wording.number_cue import reads_several, several_asked
from builder.check.wording.words import words_of
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "advice"
WHY = (
    "Where “an” or “are” fits one option alone, the sentence gives the answer away to whoever reads it aloud."
)
BAD = Example(
    "questions/cold_time.yml",
    """
    stem: A cold pack lies on the skin with an
    one:
      options:
        - {text: insulating cloth, right: yes, because: It keeps the skin from freezing.}
        - {text: bare edge, because: The skin may freeze.}
        - {text: layer of oil, because: The skin may freeze.}
    """,
)
GOOD = Example(
    "questions/cold_time.yml",
    """
    stem: What lies between a cold pack and the skin?
    one:
      options:
        - {text: A cloth, right: yes, because: It keeps the skin from freezing.}
        - {text: A film of oil, because: The skin may freeze.}
        - {text: A strip of tape, because: The skin may freeze.}
    """,
)

_ARTICLE = re.compile(r"\b(an?)\W*$", re.IGNORECASE)
_EITHER = re.compile(r"a ?\(n\)|a/an", re.IGNORECASE)
_SOUNDS_OPEN = re.compile(r"[aeio]|u(?!ni|se|su|ti)|hour|honest|heir", re.IGNORECASE)
_SOUNDS_CLOSED = re.compile(r"one\b|once\b|eu", re.IGNORECASE)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Stems whose article or number fits some options and not others."""
    for _, question in asked(evidence):
        cue = _article(question) or _number(question)
        if cue:
            remedy = "Put the article into each option, or ask a whole question that fits all of them."
            yield Finding(question.file, ("stem",), cue, remedy)


def _article(question: Asked) -> str | None:
    found = None if _EITHER.search(question.stem) else _ARTICLE.search(question.stem)
    if found is None or not question.options:
        return None
    wants_open = found[1].lower() == "an"
    fits = [_opens(one.text) == wants_open for one in question.options]
    if all(fits) or not any(fits):
        return None
    return f"The stem ends with “{found[1]}”, which fits {sum(fits)} of {len(fits)} options."


def _opens(option: str) -> bool:
    first = (words_of(option) or [""])[0]
    return _SOUNDS_OPEN.match(first) is not None and not _SOUNDS_CLOSED.match(first)


def _number(question: Asked) -> str | None:
    several = several_asked(question.stem)
    if several is None or not question.right:
        return None
    right = [reads_several(one.text) == several for one in question.right]
    wrong = [reads_several(one.text) == several for one in question.wrong]
    if not all(right) or 2 * wrong.count(False) < len(wrong):
        return None
    asked_for = "several things" if several else "one thing"
    return (
        f"The stem asks for {asked_for}; {wrong.count(False)} of {len(wrong)} wrong options do not read so."
    )
