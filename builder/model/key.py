"""Keys: what is right, and why. They never meet a paper on the student side."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from builder.model.noun import Noun, Share
from builder.model.question import QuestionKind
from builder.model.station import Criterion


class NumberRange(Noun):
    """The numbers that are right, from `least` to `most`, both included; the one meant, and its unit."""

    value: Decimal
    least: Fraction
    most: Fraction
    unit: str


class Rubric(Noun):
    """By what a person marks a written answer: an example that earns every point, and the criteria."""

    example: str
    criteria: tuple[Criterion, ...]


class KeyAnswer(Noun):
    """What is right for one question; `reviewed`: a clinician has looked at all that it rests on.

    `right` holds the right options (one, many), all steps in their right order (order), or the options with
    most votes (panel). `must` holds steps of which the first must come first whatever else (order), `pairs`
    what belongs together (match), `votes` what the panel chose (panel). `reasons` gives a reason for each
    option, step or left side, and each partner of none, by its id; for a number for each value by how it
    reads. `written` names the author's question; where it stands, `case` and `visit` are empty.
    """

    question: str
    kind: QuestionKind
    right: tuple[str, ...]
    options: tuple[str, ...]
    policy: str
    must_pass: bool
    objective: str
    topic: str
    case: str
    visit: str
    reasons: dict[str, str]
    reviewed: bool = False
    written: str = ""
    partners: tuple[str, ...] = ()
    must: tuple[tuple[str, str], ...] = ()
    pairs: tuple[tuple[str, str], ...] = ()
    votes: tuple[tuple[str, int], ...] = ()
    within: NumberRange | None = None
    rubric: Rubric | None = None


class Key(Noun):
    """The key of one version."""

    test: str
    version: str
    answers: tuple[KeyAnswer, ...]


class KeyRing(Noun):
    """Every key of one test; `key_edition` chains to the published edition."""

    test: str
    edition: str
    key_edition: str
    pass_mark: Share
    tries: int
    keys: tuple[Key, ...]

    def version(self, name: str) -> Key | None:
        """The key of one version, if there is one."""
        return next((one for one in self.keys if one.version == name), None)


Marks = Fraction
