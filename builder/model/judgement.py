"""What the rules say of a visit: phase, severity, session, and each option as written."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal, InvalidOperation
from typing import Annotated

from pydantic import BeforeValidator, PlainSerializer

from builder.model.card import Aim, Answer, Contested, Phase
from builder.model.rule import FirstAction, Urgency
from builder.model.tables import Severity


def _tagged(value: str | Decimal) -> object:
    return {"number": str(value)} if isinstance(value, Decimal) else value


def _untagged(value: object) -> object:
    if not isinstance(value, dict) or set(value) != {"number"}:
        return value
    try:
        return Decimal(value["number"])
    except (InvalidOperation, TypeError, ValueError):
        raise ValueError("no number") from None


Value = Annotated[
    str | Decimal, PlainSerializer(_tagged, when_used="json"), BeforeValidator(_untagged)
]  # as JSON a number stays apart from a word that looks like one


@dataclass(frozen=True)
class Reason:
    """One step of a judgement in words, with the facts and sources it rests on."""

    text: str
    facts: tuple[str, ...] = ()
    source: tuple[str, ...] = ()


@dataclass(frozen=True)
class Asked:
    """A question whose answer would settle something, and the rules that wait for it."""

    fact: str
    question: str
    rules: tuple[str, ...]


@dataclass(frozen=True)
class Fired:
    """A rule, cell or limit that bears on an answer: `fires` surely, or `open` for want of a record."""

    id: str
    title: str
    truth: str
    effect: str
    why: str
    strength: str
    source: tuple[str, ...]
    contested: Contested | None
    reviewed: bool
    change: str | None = None


@dataclass(frozen=True)
class PhaseJudgement:
    """The phases the visit may be in, with reasons; `next_in_hours` by the calendar alone."""

    possible: tuple[Phase, ...]
    reasons: tuple[Reason, ...]
    next_phase: Phase | None = None
    next_in_hours: Decimal | None = None


@dataclass(frozen=True)
class SeverityJudgement:
    """The grades the injury may have; `gradable` says whether a published table could tell."""

    possible: tuple[Severity, ...]
    table: str | None
    gradable: bool
    reasons: tuple[Reason, ...]


@dataclass(frozen=True)
class SessionJudgement:
    """Go on, ask first, or stop and refer."""

    answer: str
    urgency: Urgency | None
    ask: tuple[Asked, ...]
    rules: tuple[Fired, ...]
    first_action: FirstAction | None


@dataclass(frozen=True)
class WouldChange:
    """A smallest change in the room that gives another answer."""

    set: dict[str, Value]
    answer: Answer
    text: str


@dataclass(frozen=True)
class OptionJudgement:
    """One option as written: its answer as it surely is and at worst, and whether it serves the aim.

    `more_would`: more changes of the same size would change it than `would_change` tells.
    """

    card: str
    site: str
    written: dict[str, Value]
    answer: Answer
    at_worst: Answer
    serves_aim: bool
    right: bool
    ask: tuple[Asked, ...]
    rules: tuple[Fired, ...]
    change: str | None
    would_change: tuple[WouldChange, ...] = field(default=())
    more_would: bool = False


@dataclass(frozen=True)
class DoseJudgement:
    """Other doses of one chosen option, along its card's ladder: each value's answer at worst."""

    chosen: int
    attribute: str
    written: Decimal
    answers: dict[Decimal, Answer]


@dataclass(frozen=True)
class Turn:
    """One thing that may come up in the room, and the urgency of the referral it would bring; None for none.

    Without an urgency it surely changes nothing: neither the session nor any chosen option. `found`: it is
    there today already. `rules`: those that would refer.
    """

    fact: str
    value: Value
    urgency: Urgency | None = None
    rules: tuple[Fired, ...] = ()
    found: bool = False


@dataclass(frozen=True)
class Doubt:
    """One question, and whether it matters: whether the session, or a chosen option, waits for its answer.

    `chosen`: the place of the option, None for the session. `rules`: those that wait.
    """

    fact: str
    question: str
    chosen: int | None
    rules: tuple[Fired, ...] = ()
    matters: bool = False


@dataclass(frozen=True)
class VisitJudgement:
    """All the rules say of one visit; options follow the author's order, `cards` covers the library.

    `turns` and `doubts`: what may come up, and what must be asked.
    """

    visit: str
    phase: PhaseJudgement
    severity: SeverityJudgement
    session: SessionJudgement
    aims: tuple[Aim, ...]
    chosen: tuple[OptionJudgement, ...]
    wrong: tuple[OptionJudgement, ...]
    cards: Mapping[str, OptionJudgement]
    doses: tuple[DoseJudgement, ...] = ()
    turns: tuple[Turn, ...] = ()
    doubts: tuple[Doubt, ...] = ()


@dataclass(frozen=True)
class Hole:
    """One fault of the rule set: its sort, what it is about, and the smallest witness in words."""

    sort: str
    about: str
    witness: str


@dataclass(frozen=True)
class FailedExample:
    """A rule's own example that does not come out as the rule says."""

    rule: str
    index: int
    expected: str
    found: str


@dataclass(frozen=True)
class Covered:
    """What the visits of a course show of one rule.

    `decides`: without it some visit would end otherwise. `near_miss`: some visit is one fact short of it.
    """

    rule: str
    decides: bool
    near_miss: bool
