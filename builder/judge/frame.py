"""One visit made ready for judging: its state, phases, session and aims, each a set of what may be."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

from builder.judge.space import Space
from builder.judge.truth import Known
from builder.model.card import Aim, Phase
from builder.model.judgement import Asked, PhaseJudgement, Reason, SessionJudgement, SeverityJudgement
from builder.model.rule import Urgency


@dataclass
class Kept:
    """What one judge of options works out of a visit but once.

    `known`: what is true of the rules; `live`: the effects that may fire; `on_card`: those of them on a card;
    `waits`: what a client is asked where something is open; `asked`: the questions, by what waits for them.
    """

    known: Known
    live: list[Any]
    on_card: dict[str, list[Any]] = field(default_factory=dict)
    waits: dict[str, tuple[str, ...]] = field(default_factory=dict)
    asked: dict[tuple[str, ...], tuple[Asked, ...]] = field(default_factory=dict)


@dataclass(frozen=True)
class Frame:
    """Everything of a visit that does not depend on an option.

    `answer`, `urgency`: of the session; `known`: what is true of its rules; `urgent`: of a frame left open,
    the urgencies from the least that some rule gives whatever is changed, as a mask, 0 where there is no such
    rule; `near`: a frame that is little different; `kept`: by the judge of options it belongs to; `dated`,
    `answered`: phase and session with their reasons, made where they are wanted.
    """

    state: tuple[int, ...]
    phases: tuple[Phase, ...]
    severity: SeverityJudgement
    answer: str
    urgency: Urgency | None
    aims: tuple[Aim, ...]
    known: Known
    urgent: int = 0
    near: Frame | None = field(default=None, compare=False, repr=False)
    kept: dict[Any, Kept] = field(default_factory=dict, compare=False, repr=False)
    dated: Callable[[], PhaseJudgement] = field(kw_only=True, compare=False, repr=False)
    answered: Callable[[], SessionJudgement] = field(kw_only=True, compare=False, repr=False)

    @cached_property
    def session(self) -> SessionJudgement:
        """The session with its rules and questions."""
        return self.answered()

    @cached_property
    def phase(self) -> PhaseJudgement:
        """The phase with its reasons."""
        return self.dated()

    def shown_phase(self, space: Space) -> PhaseJudgement:
        """The phase as it is shown: none where the session ends all hands-on work."""
        if self.answer == "refer" and self.urgency in ("emergency", "same_day"):
            return PhaseJudgement(("none",), (Reason(space.say("refer_today")),))
        return self.phase
