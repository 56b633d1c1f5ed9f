"""An option should not stand for other options, or for none of them."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import asked
from builder.check.wording.together import takes_others
from builder.diagnostic import Level
from builder.model.kind import Example

LEVEL: Level = "advice"
WHY = (
    "Who knows that two options are right, or that one is wrong, has solved “all of the above” without "
    "knowing the rest; “none of the above” does not show that the right answer is known."
)
BAD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: A cold pack, because: So is the next one.}
        - {text: A raised leg, because: So is the one before.}
        - {text: All of the above, right: yes, because: Both help.}
    """,
)
GOOD = Example(
    "questions/cold_time.yml",
    """
    one:
      options:
        - {text: A cold pack and a raised leg, right: yes, because: Both help.}
        - {text: A hot bath and a long walk, because: It bleeds more.}
        - {text: A firm knead and a stretch, because: It bleeds more.}
    """,
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Options that take others together, or leave all of them out."""
    for book, question in asked(evidence):
        for one in question.options:
            if takes_others(book.words, one.text):
                yield Finding(
                    question.file,
                    one.path,
                    f"“{one.text}” stands for other options.",
                    "Ask for every right option under `many`, or write an option of its own.",
                )
