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
    """One first try: the marks of the grading, and the sheet they were given for."""

    attempt: Attempt
    sheet: AnswerSheet

    @property
    def row(self) -> tuple[Fraction, ...]:
        """One mark a question, in the order of the key."""
        return tuple(one.mark for one in self.attempt.marks)

    def chosen(self, question: str) -> frozenset[str] | None:
        """The options chosen for a question, None where it was not answered."""
        value = next((one.value for one in self.sheet.answers if one.q == question), None)
        if value is None or isinstance(value, str):
            return None if value is None else frozenset({value})
        return frozenset(one for one in value if isinstance(one, str))


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
            found[place].append(Sitting(attempt, by_digest[attempt.sheet]))
    return dict(sorted(found.items()))


def _first_tries(decision: Decision) -> Mapping[str, Attempt]:
    latest_first = sorted(decision.attempts, key=lambda attempt: -attempt.number)
    return {attempt.test: attempt for attempt in latest_first}
