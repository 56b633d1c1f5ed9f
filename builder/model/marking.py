"""What a person marked of written answers: one criterion of one answer at a time."""

from __future__ import annotations

from builder.model.noun import Noun


class Marked(Noun):
    """One row of `marking.csv`: the level that one criterion of one written answer reached, and who says so.

    `question` is the author's own name for it; `answer` is the text that was marked, so that the mark holds
    for no other.
    """

    code: str
    test: str
    question: str
    criterion: str
    level: int
    by: str
    answer: str


def same_words(one: str, other: str) -> bool:
    """Whether two texts say the same, however a spreadsheet has kept their spaces and lines."""
    return one.split() == other.split()
