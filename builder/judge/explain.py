"""A judgement as data, in the shape `caseloom/explain/1`."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

from builder.model.case import Case, Visit
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
from builder.model.tables import Severity


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
