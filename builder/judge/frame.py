"""One visit made ready for judging: its state, phases, session and aims, each a set of what may be."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Any

from builder.judge.truth import Truth
from builder.model.card import Aim
from builder.model.judgement import Fired, PhaseJudgement, Reason, SessionJudgement, SeverityJudgement


@dataclass
class Kept:
    """What is the same for all options of a visit and is worked out when first asked for.

    `live`: a card's effects as given, and those that may fire; `said`: what an effect says by itself.
    """

    truths: dict[str, Truth] = field(default_factory=dict)
    live: dict[str, tuple[Any, list[Any]]] = field(default_factory=dict)
    said: dict[tuple[int, Truth], tuple[Any, Fired, list[str]]] = field(default_factory=dict)
    waits: dict[str, tuple[str, ...]] = field(default_factory=dict)


@dataclass(frozen=True)
class Frame:
    """Everything of a visit that does not depend on an option.

    `urgent`: of a frame left open, the urgencies from the least that some rule gives whatever is changed, as
    a mask; 0 where there is no such rule.
    """

    state: tuple[int, ...]
    phase: PhaseJudgement
    severity: SeverityJudgement
    session: SessionJudgement
    aims: tuple[Aim, ...]
    urgent: int = 0
    kept: Kept = field(default_factory=Kept, compare=False, repr=False)

    def shown(self) -> Frame:
        """The frame with the phase as it is shown: none where the session ends all hands-on work."""
        if self.session.answer == "refer" and self.session.urgency in ("emergency", "same_day"):
            reason = Reason("Stop and refer today: the healing phase does not count.")
            return replace(self, phase=PhaseJudgement(("none",), (reason,)))
        return self
