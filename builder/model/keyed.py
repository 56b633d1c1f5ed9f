"""What is held right in a question of each kind, under the ids that its parts have on paper."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from builder.model.noun import Noun
from builder.model.question import QuestionKind
from builder.model.station import Criterion


class NumberRange(Noun):
    """The numbers that are right, from `least` to `most`, both included; the one meant, and its unit."""

    value: Decimal
    least: Fraction
    most: Fraction
    unit: str


class Rubric(Noun):
    """How a written answer is marked: what was asked, an example that earns every point, the criteria."""

    asked: str
    example: str
    criteria: tuple[Criterion, ...]


class KeyedParts(Noun):
    """What is right; what a kind has not is empty.

    `right` holds the right options (one, many), all steps in their right order (order), or the options with
    most votes (panel). `must` holds steps of which the first must come first whatever else (order), `pairs`
    what belongs together (match), `votes` what the panel chose (panel).
    """

    kind: QuestionKind
    options: tuple[str, ...]
    right: tuple[str, ...]
    partners: tuple[str, ...] = ()
    must: tuple[tuple[str, str], ...] = ()
    pairs: tuple[tuple[str, str], ...] = ()
    votes: tuple[tuple[str, int], ...] = ()
    within: NumberRange | None = None
    rubric: Rubric | None = None
