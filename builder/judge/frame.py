"""One visit made ready for judging: its state, phases, session and aims, each a set of what may be."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Any

from builder.judge.space import Space
from builder.model.card import Aim
from builder.model.judgement import Asked, PhaseJudgement, Reason, SessionJudgement, SeverityJudgement


@dataclass
class Kept:
    """What one judge of options works out of a visit but once.

    `live`: the effects that may fire on a card; `waits`: what a client is asked where something is open;
    `asked`: the questions, by what waits for them.
    """

    live: dict[str, list[Any]]
    waits: dict[str, tuple[str, ...]] = field(default_factory=dict)
    asked: dict[tuple[str, ...], tuple[Asked, ...]] = field(default_factory=dict)


@dataclass(frozen=True)
class Frame:
    """Everything of a visit that does not depend on an option.

    `urgent`: of a frame left open, the urgencies from the least that some rule gives whatever is changed, as
    a mask; 0 where there is no such rule. `kept`: by the judge of options it belongs to.
    """

    state: tuple[int, ...]
    phase: PhaseJudgement
    severity: SeverityJudgement
    session: SessionJudgement
    aims: tuple[Aim, ...]
    urgent: int = 0
    kept: dict[Any, Kept] = field(default_factory=dict, compare=False, repr=False)

    def shown(self, space: Space) -> Frame:
        """The frame with the phase as it is shown: none where the session ends all hands-on work."""
        if self.session.answer == "refer" and self.session.urgency in ("emergency", "same_day"):
            reason = Reason(space.say("refer_today"))
            return replace(self, phase=PhaseJudgement(("none",), (reason,)))
        return self
