"""What collecting, grading and certifying hand back."""

from __future__ import annotations

from builder.model.noun import Noun
from builder.model.records import Decision


class TakenFile(Noun):
    """One file taken into the record."""

    file: str
    digest: str
    code: str
    test: str
    version: str
    rev: int


class LeftFile(Noun):
    """One file that could not be taken and was left where it is."""

    file: str
    fault: str
    remedy: str


class Collected(Noun):
    """What one run over an inbox did; `notices` name what a person should look at."""

    klass: str
    taken: tuple[TakenFile, ...]
    had: tuple[str, ...]
    left: tuple[LeftFile, ...]
    notices: tuple[str, ...]


class Graded(Noun):
    """Where every participant stands; `written` are codes with a new decision, `turned` those it reverses.

    `to_mark` are the rows by which written answers are marked, where any of them waits.
    """

    klass: str
    names: dict[str, str]
    decisions: tuple[Decision, ...]
    written: tuple[str, ...]
    turned: tuple[str, ...]
    to_mark: tuple[tuple[str, ...], ...] = ()


class Issued(Noun):
    """The certificate list and the refusals, as rows of text by column; `fresh` are the new serials."""

    klass: str
    certificates: tuple[dict[str, str], ...]
    refused: tuple[dict[str, str], ...]
    fresh: tuple[str, ...]
