"""What the checks of wording say of labelled questions, and how often that is what the labels say."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field

from builder.check.checks import (
    absolute_words,
    all_or_none,
    grammar_cue,
    lesson_lift,
    longest_option,
    overlapping_numbers,
    repeated_word,
    unequal_options,
    unmarked_negative,
)
from builder.check.evidence import Evidence
from builder.check.registry import name_of
from tests.check.wording.labelled import Labelled, lesson
from tests.check.wording.written import course_of, question

MEASURED = (
    longest_option,
    all_or_none,
    unmarked_negative,
    absolute_words,
    grammar_cue,
    overlapping_numbers,
    repeated_word,
    unequal_options,
    lesson_lift,
)


@dataclass
class Measure:
    """Faults that were found, missed and said wrongly, each as question and label."""

    found: list[tuple[str, str]] = field(default_factory=list)
    missed: list[tuple[str, str]] = field(default_factory=list)
    wrongly: list[tuple[str, str]] = field(default_factory=list)

    @property
    def precision(self) -> float:
        """Of all that was said, the share that is so."""
        return len(self.found) / (len(self.found) + len(self.wrongly))

    @property
    def recall(self) -> float:
        """Of all that is so, the share that was said."""
        return len(self.found) / (len(self.found) + len(self.missed))

    def lines(self) -> list[str]:
        """The measure in words: the whole, then each label."""
        parts = [Counter(label for _, label in part) for part in (self.found, self.missed, self.wrongly)]
        labels = sorted({label for part in parts for label in part})
        told = [
            f"{one}: {parts[0][one]} found, {parts[1][one]} missed, {parts[2][one]} wrongly" for one in labels
        ]
        return [f"precision {self.precision:.3f}, recall {self.recall:.3f}", *told]


def measured(half: Iterable[Labelled]) -> Measure:
    """Each question by itself, in a course with the lesson they belong to."""
    measure = Measure()
    for one in half:
        said = said_of(one)
        measure.found += [(one.id, label) for label in sorted(said & one.faults)]
        measure.missed += [(one.id, label) for label in sorted(one.faults - said)]
        measure.wrongly += [(one.id, label) for label in sorted(said - one.faults)]
    return measure


def said_of(one: Labelled) -> frozenset[str]:
    """The names of the checks that find something in this question."""
    course = _course_of(one)
    return frozenset(name_of(check) for check in MEASURED if any(check.check(course)))


def _course_of(one: Labelled) -> Evidence:
    right = [text for place, text in enumerate(one.options) if place in one.right]
    wrong = [text for place, text in enumerate(one.options) if place not in one.right]
    key = right[0] if len(right) == 1 else right
    return course_of(question(one.stem, key, *wrong), lesson=lesson())
