"""One visit made ready for judging: its state, phases, session and aims, each a set of what may be."""

from __future__ import annotations

from dataclasses import dataclass, replace

from builder.model.card import Aim
from builder.model.judgement import PhaseJudgement, Reason, SessionJudgement, SeverityJudgement


@dataclass(frozen=True)
class Frame:
    """Everything of a visit that does not depend on an option."""

    state: tuple[int, ...]
    phase: PhaseJudgement
    severity: SeverityJudgement
    session: SessionJudgement
    aims: tuple[Aim, ...]

    def shown(self) -> Frame:
        """The frame with the phase as it is shown: none where the session ends all hands-on work."""
        if self.session.answer == "refer" and self.session.urgency in ("emergency", "same_day"):
            reason = Reason("Stop and refer today: the healing phase does not count.")
            return replace(self, phase=PhaseJudgement(("none",), (reason,)))
        return self
