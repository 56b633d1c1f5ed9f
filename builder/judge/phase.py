"""Which healing phase a visit is in: the calendar, held back by signs, never pushed on."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal
from itertools import product

from builder.judge.space import Space
from builder.judge.truth import OPEN, TRUE, compiled, open_facts
from builder.model.card import PHASES, Phase
from builder.model.judgement import PhaseJudgement, Reason
from builder.model.tables import Clock, PhaseBook, Sign

HEALING: tuple[Phase, ...] = PHASES[:4]
PLACE = {phase: place for place, phase in enumerate(HEALING)}


class PhaseJudge:
    """The clocks and signs of one rule set, ready to date a visit."""

    def __init__(self, book: PhaseBook, space: Space) -> None:
        """Compile the signs and sort the clocks by tissue and severity."""
        self.book, self.space = book, space
        self.clocks = {(clock.tissue, clock.severity): clock for clock in book.clocks}
        self.dated = {key: tuple(self._dated(clock)) for key, clock in self.clocks.items()}
        self.does_not_apply = compiled(book.does_not_apply, space)
        self.signs = [(sign, compiled(sign.when, space)) for sign in book.signs]
        self.doubts = [(sign, compiled(sign.when, space)) for sign in book.doubt]

    def judge(self, state: list[int], hours: Decimal | None = None) -> tuple[PhaseJudgement, set[int]]:
        """The possible phases with reasons, and how many phases the signs may lie behind the calendar.

        `hours` since the latest injury, exactly as recorded, dates the next phase.
        """
        ordered, behind = self.possible(state)
        if self.does_not_apply(state) is TRUE:
            reason = Reason(self.space.say("no_phase"), ("injury",), self.book.source)
            return PhaseJudgement(ordered, (reason,)), behind
        by_clock, (sure, maybe) = self._by_clock(state), self._live(state)
        reasons = [self._clock_reason(phase, by_clock[phase]) for phase in HEALING if phase in by_clock]
        reasons += [_sign_reason(sign) for sign in sure if _holds(sign, ordered)]
        reasons += [self._unseen(sign) for sign in maybe if _matters(sign, by_clock)]
        reasons += [_sign_reason(one) for one, test in self.doubts if test(state) is TRUE]
        following, left = self._next(state, ordered, hours)
        return PhaseJudgement(ordered, tuple(reasons), following, left), behind

    def possible(self, state: list[int]) -> tuple[tuple[Phase, ...], set[int]]:
        """The same without the reasons: the possible phases, and how many the signs may lie behind."""
        applies = self.does_not_apply(state)
        if applies is TRUE:
            return ("none",), {0}
        possible, behind = _held_back(self._by_clock(state), *self._live(state))
        if applies is OPEN:
            possible.add("none")
            behind.add(0)
        return tuple([phase for phase in PHASES if phase in possible]), behind

    def waits_for(self, state: list[int]) -> list[str]:
        """What a phase waits for: its clock, every open sign, and whether phases apply."""
        clock = [name for name in ("tissue", "severity", "hours") if len(self._values(state, name)) > 1]
        by_clock = self._by_clock(state)
        signs = [sign for sign, test in self.signs if test(state) is OPEN and _matters(sign, by_clock)]
        conditions = [self.book.does_not_apply, *(sign.when for sign in signs)]
        return [*clock, *(name for node in conditions for name in open_facts(node, self.space, state))]

    def _dated(self, clock: Clock) -> Iterator[tuple[Phase, int]]:
        """Each phase of a clock with the mask of the hours in it."""
        phases = [phase_at(clock, Decimal(cell.value)) for cell in self.space.variables["hours"].cells]
        for phase in dict.fromkeys(phases):
            yield phase, sum(1 << place for place, one in enumerate(phases) if one == phase)

    def _by_clock(self, state: list[int]) -> dict[Phase, Clock]:
        """The phases by the calendar, each with the first clock that gives it."""
        tissues, severities = self._values(state, "tissue"), self._values(state, "severity")
        hours = state[self.space.index["hours"]]
        found: dict[Phase, Clock] = {}
        for key in product(tissues, severities):
            for phase, mask in self.dated[key]:  # type: ignore[index]
                if hours & mask:
                    found.setdefault(phase, self.clocks[key])  # type: ignore[index]
        return found

    def _clock_reason(self, phase: Phase, clock: Clock) -> Reason:
        return Reason(self._calendar_text(clock, phase), ("hours", "severity", "tissue"), clock.source)

    def _live(self, state: list[int]) -> tuple[list[Sign], list[Sign]]:
        """The signs that are surely there, and those that may be."""
        truths = [(sign, test(state)) for sign, test in self.signs]
        sure = [sign for sign, truth in truths if truth is TRUE]
        return sure, [sign for sign, truth in truths if truth is OPEN]

    def _calendar_text(self, clock: Clock, phase: Phase) -> str:
        facts = self.space.variables
        severity = facts["severity"].fact.in_words(clock.severity)
        tissue = facts["tissue"].fact.in_words(clock.tissue)
        words = self.book.phase_words[phase]
        return self.space.say("by_calendar", severity=severity, tissue=tissue, phase=words)

    def _unseen(self, sign: Sign) -> Reason:
        return Reason(self.space.say("not_recorded", sign=sign.text), (), sign.source)

    def _next(
        self, state: list[int], possible: tuple[Phase, ...], hours: Decimal | None
    ) -> tuple[Phase | None, Decimal | None]:
        tissues, severities = self._values(state, "tissue"), self._values(state, "severity")
        dated = len(possible) == 1 and possible[0] in HEALING[:3] and hours is not None
        if not dated or hours is None or len(tissues) != 1 or len(severities) != 1:
            return None, None
        clock = self.clocks[(tissues[0], severities[0])]  # type: ignore[index]
        left = ends(clock)[HEALING.index(possible[0])] - hours
        return (HEALING[HEALING.index(possible[0]) + 1], left) if left > 0 else (None, None)

    def _values(self, state: list[int], name: str) -> list[str | Decimal]:
        return self.space.variables[name].values_in(state[self.space.index[name]])


def ends(clock: Clock) -> tuple[Decimal, Decimal, Decimal]:
    """When acute, early and late repair end by the calendar, in hours."""
    return clock.acute_until, clock.early_repair_until, clock.late_repair_until


def phase_at(clock: Clock, hours: Decimal) -> Phase:
    """The phase by the calendar; the hour at which a phase ends still belongs to it."""
    return HEALING[sum(hours > end for end in ends(clock))]


def _held_back(by_clock: Iterable[Phase], sure: list[Sign], maybe: list[Sign]) -> tuple[set[Phase], set[int]]:
    possible: set[Phase] = set()
    behind: set[int] = set()
    latest = min([PLACE[sign.no_later_than] for sign in sure], default=len(HEALING))
    for clock_phase in by_clock:
        at = PLACE[clock_phase]
        held = min(at, latest)
        for index in {held, *[min(held, PLACE[sign.no_later_than]) for sign in maybe]}:
            possible.add(HEALING[index])
            behind.add(at - index)
    return possible, behind


def _holds(sign: Sign, possible: Iterable[Phase]) -> bool:
    return PLACE[sign.no_later_than] <= max(PLACE[phase] for phase in possible if phase in PLACE)


def _matters(sign: Sign, by_clock: Iterable[Phase]) -> bool:
    return any(PLACE[sign.no_later_than] < PLACE[phase] for phase in by_clock)


def _sign_reason(sign: Sign) -> Reason:
    return Reason(sign.text, (), sign.source)
