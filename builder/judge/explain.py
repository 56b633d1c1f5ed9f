"""A judgement in the shape `caseloom/explain/1`, and as a trace in words."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import Any

from builder.model.case import Case, Visit
from builder.model.fact import plain
from builder.model.judgement import (
    Asked,
    Fired,
    OptionJudgement,
    PhaseJudgement,
    Reason,
    SessionJudgement,
    SeverityJudgement,
    VisitJudgement,
)
from builder.model.library import Content
from builder.model.tables import Severity

ANSWER_WORDS = {
    "ok": "OK as written",
    "change": "Only if changed",
    "not_yet": "Not yet",
    "barred": "Not here",
}
SESSION_WORDS = {"go_on": "Go on", "ask_first": "Ask first", "refer": "Stop and refer"}


def as_json(case: Case, judged: tuple[VisitJudgement, ...]) -> dict[str, Any]:
    """The whole judgement of one case as plain data, fixed in shape."""
    visits = [_visit(case, visit, one) for visit, one in zip(case.visits, judged, strict=True)]
    return {"format": "caseloom/explain/1", "case": case.id, "visits": visits}


def _visit(case: Case, visit: Visit, judged: VisitJudgement) -> dict[str, Any]:
    options = [("chosen", one) for one in judged.chosen] + [("wrong", one) for one in judged.wrong]
    return {
        "id": visit.id,
        "phase": _phase(visit, judged.phase),
        "severity": _severity(visit.severity or case.severity, judged.severity),
        "session": _session(judged.session),
        "options": [_option(f"o{i}", offered, one) for i, (offered, one) in enumerate(options, start=1)],
        "cards": {name: _option(name, None, one) for name, one in judged.cards.items()},
    }


def _phase(visit: Visit, phase: PhaseJudgement) -> dict[str, Any]:
    following = (
        {"phase": phase.next_phase, "in_hours": _number(phase.next_in_hours)} if phase.next_phase else None
    )
    return {
        "declared": visit.phase,
        "possible": list(phase.possible),
        "reasons": [_reason(one) for one in phase.reasons],
        "next": following,
    }


def _severity(declared: Severity | None, severity: SeverityJudgement) -> dict[str, Any]:
    return {
        "declared": declared,
        "possible": list(severity.possible),
        "table": severity.table,
        "gradable": severity.gradable,
        "reasons": [_reason(one) for one in severity.reasons],
    }


def _session(session: SessionJudgement) -> dict[str, Any]:
    return {
        "answer": session.answer,
        "urgency": session.urgency,
        "ask": [_asked(one) for one in session.ask],
        "rules": [_fired(one) for one in session.rules],
        "first_action": session.first_action.model_dump() if session.first_action else None,
    }


def _option(name: str, offered: str | None, judged: OptionJudgement) -> dict[str, Any]:
    written = {"site": judged.site, **{key: _number(value) for key, value in judged.written.items()}}
    return {
        "id": name,
        "card": judged.card,
        "written": written,
        "offered": offered,
        "answer": judged.answer,
        "at_worst": judged.at_worst,
        "serves_aim": judged.serves_aim,
        "right": judged.right,
        "ask": [_asked(one) for one in judged.ask],
        "rules": [_fired(one) for one in judged.rules],
        "change": judged.change,
        "would_change": [
            {
                "set": {key: _number(value) for key, value in one.set.items()},
                "answer": one.answer,
                "text": one.text,
            }
            for one in judged.would_change
        ],
        "more_would_change": judged.more_would,
    }


def _fired(one: Fired) -> dict[str, Any]:
    return {
        "id": one.id,
        "truth": one.truth,
        "effect": one.effect,
        "strength": one.strength,
        "source": list(one.source),
        "contested": one.contested is not None,
    }


def _asked(one: Asked) -> dict[str, Any]:
    return {"fact": one.fact, "question": one.question, "rules": list(one.rules)}


def _reason(one: Reason) -> dict[str, Any]:
    return {"text": one.text, "facts": list(one.facts), "source": "; ".join(one.source) or None}


def _number(value: str | Decimal | None) -> str | int | float | None:
    if not isinstance(value, Decimal):
        return value
    return int(value) if value == value.to_integral_value() else float(value)


def in_words(case: Case, judged: tuple[VisitJudgement, ...], content: Content) -> Iterator[str]:
    """The trace of one case, line by line, for a terminal."""
    yield f"{case.title} ({case.id})"
    for visit, one in zip(case.visits, judged, strict=True):
        yield ""
        yield f"{visit.title}"
        yield from _derived_in_words(one, content)
        yield from _session_in_words(one)
        for label, options in (("chosen", one.chosen), ("wrong", one.wrong)):
            for option in options:
                yield from _option_in_words(label, option, content)


def _derived_in_words(judged: VisitJudgement, content: Content) -> Iterator[str]:
    phases = " or ".join(content.phases.phase_words[phase] for phase in judged.phase.possible)
    yield f"  Phase     {phases}"
    yield from (f"            {reason.text}" for reason in judged.phase.reasons)
    if judged.phase.next_phase and judged.phase.next_in_hours is not None:
        words = content.phases.phase_words[judged.phase.next_phase]
        yield f"            By the calendar {words} begins in {plain(judged.phase.next_in_hours)} h."
    grades = " or ".join(content.severity.words[grade] for grade in judged.severity.possible)
    yield f"  Severity  {grades}"
    yield from (f"            {reason.text}" for reason in judged.severity.reasons)


def _session_in_words(judged: VisitJudgement) -> Iterator[str]:
    session = judged.session
    urgency = f", {session.urgency.replace('_', ' ')}" if session.urgency else ""
    yield f"  Session   {SESSION_WORDS[session.answer]}{urgency}"
    yield from (f"            ask: {one.question}" for one in session.ask)
    yield from (f"            {one.id}: {one.why}" for one in session.rules if one.truth == "fires")
    if session.first_action is not None:
        yield from (f"            do: {one}" for one in session.first_action.do)
        yield from (f"            do not: {one}" for one in session.first_action.avoid)


def _option_in_words(label: str, option: OptionJudgement, content: Content) -> Iterator[str]:
    card = content.cards[option.card]
    answer = ANSWER_WORDS[option.answer]
    if option.at_worst != option.answer:
        answer += f", at worst {ANSWER_WORDS[option.at_worst].lower()}"
    aim = "" if option.serves_aim else "; does not serve today's aim"
    yield f"  {label.capitalize():<8}  {card.name}, {option.site}: {answer}{aim}"
    yield from (
        f"            {one.id} ({one.truth}): {one.why}" for one in option.rules if one.effect != "ok"
    )
    if option.change:
        yield f"            change: {option.change}"
    yield from (
        f"            would change it: {one.text} -> {ANSWER_WORDS[one.answer]}"
        for one in option.would_change
    )
    if option.more_would:
        yield "            and more changes of as many things."
