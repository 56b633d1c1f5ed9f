"""Who sat which version first, with what they answered and what it earned."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from builder.model.answers import AnswerSheet
from builder.model.records import Attempt, Decision, KeptSheet


@dataclass(frozen=True)
class Sitting:
    """One first try: its marks, in the order of the key, and what was given for each question answered.

    `waits`: a written answer of it is not marked yet, so its marks are not whole.
    """

    sheet: str
    marks: dict[str, Fraction]
    given: dict[str, Value]
    waits: bool

    @property
    def row(self) -> tuple[Fraction, ...]:
        """The marks alone."""
        return tuple(self.marks.values())


Value = str | tuple[str | tuple[str, str], ...]
Version = tuple[str, str, str, str]


def first_sittings(
    decisions: Iterable[Decision], sheets: Iterable[KeptSheet]
) -> dict[Version, list[Sitting]]:
    """The first try of every participant at every test, by test, version, edition and key edition."""
    by_digest = {kept.digest: kept.sheet for kept in sheets}
    found: dict[Version, list[Sitting]] = defaultdict(list)
    for decision in decisions:
        for attempt in _first_tries(decision).values():
            place = (attempt.test, attempt.version, attempt.edition, attempt.key_edition)
            found[place].append(_sitting(attempt, by_digest[attempt.sheet]))
    return dict(sorted(found.items()))


def _sitting(attempt: Attempt, sheet: AnswerSheet) -> Sitting:
    return Sitting(
        sheet=attempt.sheet,
        marks={one.question: one.mark for one in attempt.marks},
        given={one.q: one.value for one in sheet.answers if one.value is not None},
        waits=bool(attempt.waits),
    )


def _first_tries(decision: Decision) -> Mapping[str, Attempt]:
    latest_first = sorted(decision.attempts, key=lambda attempt: -attempt.number)
    return {attempt.test: attempt for attempt in latest_first}
