"""A rule set small enough to see through at a glance, for the judge's own tests."""

from __future__ import annotations

from typing import Any

from builder.disk import shipped
from builder.model.card import Card
from builder.model.case import Case
from builder.model.fact import FactBook, ScreeningBook
from builder.model.library import Content
from builder.model.rule import Rule
from builder.model.tables import PhaseBook, ReferenceBook, SeverityBook
from builder.read.words import read_words

PHASES = ["acute", "early_repair", "late_repair", "remodelling", "none"]


def fact(kind: str, group: str, worse: str, **more: object) -> dict[str, Any]:
    """One declared fact as an author would write it."""
    return {"kind": kind, "label": more.pop("label", group), "group": group, "worse_when": worse, **more}


WORDS = read_words(shipped("content")).texts or {}
FACTS = {
    "injury": fact("one_of", "measure", "both", label="Injury", values=["contusion", "soreness"]),
    "tissue": fact("one_of", "measure", "both", values=["muscle", "ligament", "tendon"]),
    "region": fact("one_of", "measure", "both", values=["thigh", "ankle"]),
    "age": fact("number", "history", "both", label="Age", low=0, high=110),
    "consent": fact("yes_no", "consent", "no", screen=True, question="May I?"),
    "hours": fact("number", "measure", "both", low=0, high=100000, room=True, label="Time", unit="h"),
    "hours_since_first": fact("number", "measure", "both", low=0, high=100000),
    "reinjured": fact("yes_no", "history", "yes"),
    "phase": fact("one_of", "measure", "neither", label="Phase", values=PHASES),
    "severity": fact("scale", "measure", "higher", values=["mild", "moderate", "severe"]),
    "signs_behind": fact("number", "measure", "higher", low=0, high=3),
    "session_urgency": fact(
        "scale",
        "measure",
        "higher",
        label="Referral",
        values=["none", "not_urgent", "days", "same_day", "emergency"],
    ),
    "swelling": fact(
        "scale", "sign", "higher", values=["none", "falling", "rising"], room=True, label="Swelling"
    ),
    "knee_flexion": fact(
        "number", "measure", "lower", low=0, high=160, room=True, label="Knee bend", unit="°"
    ),
    "recalled_flexion": fact("number", "measure", "lower", low=0, high=160),
    "numb_skin": fact("yes_no", "contraindication", "yes", question="Is the skin numb?", label="Numb skin"),
    "fever": fact("yes_no", "red_flag", "yes", screen=True, question="A fever?", label="Fever"),
    "cool_head": fact("yes_no", "sign", "no", excludes=["fever"], label="Cool head"),
}
WRITTEN = {
    "site": fact(
        "one_of",
        "written",
        "neither",
        values=["on", "adjacent", "proximal", "distal", "remote"],
        room=True,
        label="Site",
    ),
    "minutes": fact("number", "written", "higher", low=1, high=120, unit="min", label="Time", room=True),
    "barrier": fact(
        "yes_no", "written", "no", words={"yes": "cloth between", "no": "on the skin"}, room=True
    ),
    "urgency": fact(
        "scale", "written", "lower", label="Urgency", values=["not_urgent", "days", "same_day", "emergency"]
    ),
}
ROW = {"why": "Because.", "source": ["own_default"], "strength": "expert"}


def card(
    name: str, kind: str, serves: list[str], rows: list[dict[str, Any]], **more: object
) -> dict[str, Any]:
    """One card whose rows share a why and a source."""
    baseline = [{**ROW, **row} for row in rows]
    return {
        "format": 1, "id": name, "name": name.title(), "kind": kind, "hands_on": more.pop("hands_on", False),
        "serves": serves, "what": "What it is.", "baseline": baseline, **more,
    }  # fmt: skip


CARDS = [
    card(
        "cold", "technique", ["limit"],
        [
            {"phase": ["acute"], "answer": "ok", "limits": {"minutes": {"at_most": 20}, "barrier": "yes"}},
            {"phase": PHASES[1:], "answer": "ok", "limits": {"minutes": {"at_most": 15}, "barrier": "yes"}},
        ],
        groups=["cold"], usual={"minutes": 15, "barrier": "yes"}, ladder={"minutes": [5, 15, 30, 60]},
    ),
    card(
        "stroke", "technique", ["clear", "restore"],
        [
            {"phase": ["acute"], "site": ["on", "adjacent"], "answer": "barred"},
            {"phase": ["early_repair"], "site": ["on", "adjacent"], "answer": "not_yet"},
            {
                "phase": ["acute", "early_repair"], "site": ["proximal", "distal", "remote"], "answer": "ok",
            },
            {"phase": ["late_repair", "remodelling", "none"], "answer": "ok"},
        ],
        hands_on=True,
    ),
    card("refer", "action", ["refer"], [{"phase": PHASES, "answer": "ok"}], usual={"urgency": "emergency"}),
    card("ask", "action", ["ask"], [{"phase": PHASES, "answer": "ok"}]),
    card("protect", "action", ["limit", "clear", "restore", "ease"], [{"phase": PHASES, "answer": "ok"}]),
]  # fmt: skip


def rule(name: str, when: dict[str, Any], **effect: object) -> dict[str, Any]:
    """One rule with an example of each kind, which its own test does not look at."""
    examples = effect.pop("examples", [{"fires": "yes", "given": {}}, {"fires": "no", "given": {}}])
    return {
        "format": 1, "id": name, "title": name.title(), "when": when, "why": f"Why {name}.",
        "source": ["own_default"], "strength": "expert", "examples": examples, **effect,
    }  # fmt: skip


RULES = [
    rule("fever", {"fever": "yes"}, session={"urgency": "same_day"}),
    rule(
        "refer_ends",
        {"session_urgency": {"at_least": "same_day"}},
        options=[{"groups": ["hands_on"], "answer": "barred"}],
    ),
    rule(
        "refer_soon_enough",
        {"session_urgency": {"at_least": "same_day"}},
        options=[{"cards": ["refer"], "needs": {"urgency": {"at_least": "same_day"}}}],
    ),
    rule("no_consent", {"consent": "no"}, options=[{"groups": ["hands_on"], "answer": "barred"}]),
    rule("numb", {"numb_skin": "yes"}, options=[{"groups": ["cold"], "answer": "barred"}]),
]


def phase_book() -> dict[str, Any]:
    """Clocks for each tissue and severity, and one sign."""
    ends = {"mild": (48, 96, 336), "moderate": (72, 240, 504), "severe": (168, 504, 1008)}
    clocks = [
        {
            "tissue": tissue, "severity": grade, "acute_until": a, "early_repair_until": e,
            "late_repair_until": late, "source": ["own_default"],
        }
        for tissue in ("muscle", "ligament", "tendon")
        for grade, (a, e, late) in ends.items()
    ]  # fmt: skip
    sign = {
        "id": "rising", "when": {"swelling": "rising"}, "no_later_than": "acute",
        "text": "Swelling is rising.", "source": ["own_default"], "strength": "expert",
    }  # fmt: skip
    aims = dict(zip(PHASES, ("limit", "clear", "restore", "restore", "ease"), strict=True))
    words = {phase: phase.replace("_", " ") for phase in PHASES}
    return {
        "format": 1, "does_not_apply": {"injury": "soreness"}, "clocks": clocks, "signs": [sign],
        "aims": aims, "aim_words": {one: one for one in (*aims.values(), "ask", "refer")},
        "phase_words": words, "source": ["own_default"],
    }  # fmt: skip


SEVERITY: dict[str, Any] = {
    "format": 1,
    "words": {"mild": "mild", "moderate": "moderate", "severe": "severe"},
    "tables": {
        "thigh": {
            "applies": {"injury": "contusion", "region": "thigh"},
            "measure": "knee_flexion",
            "recalled": "recalled_flexion",
            "not_before": "12 h",
            "not_after": "24 h",
            "bands": [
                {"grade": "mild", "when": {"knee_flexion": {"over": 90}}},
                {"grade": "moderate", "when": {"knee_flexion": {"at_least": 45, "at_most": 90}}},
                {"grade": "severe", "when": {"knee_flexion": {"below": 45}}},
            ],
            "source": ["own_default"],
        }
    },
}


def content(
    *, rules: list[dict[str, Any]] | None = None, cards: list[dict[str, Any]] | None = None
) -> Content:
    """The small rule set, or one with other rules or cards."""
    return Content(
        facts=FactBook.model_validate({"format": 1, "facts": FACTS, "written": WRITTEN}),
        screening=ScreeningBook.model_validate(
            {
                "format": 1,
                "sets": {
                    "short": {"name": "Short screen", "date": "2026-11-01", "covers": ["fever", "numb_skin"]}
                },
            }
        ),
        phases=PhaseBook.model_validate(phase_book()),
        severity=SeverityBook.model_validate(SEVERITY),
        references=ReferenceBook.model_validate(
            {"format": 1, "sources": {"own_default": {"cite": "Own default"}}}
        ),
        cards={one["id"]: Card.model_validate(one) for one in (CARDS if cards is None else cards)},
        rules={one["id"]: Rule.model_validate(one) for one in (RULES if rules is None else rules)},
        boards={},
        words=WORDS,
    )


def case(*visits: dict[str, Any], **more: object) -> Case:
    """A bruised thigh with these visits; what is left out is unremarkable, a finding of None unseen."""
    whole = {
        "id": "day", "title": "A day", "since_injury": "18 h", "consent": "yes", "screen": {"set": "short"},
        "phase": "acute", "chosen": [{"card": "protect"}],
    }  # fmt: skip
    full = [{**whole, **visit, "findings": _seen(visit.get("findings", {}))} for visit in visits]
    return Case.model_validate(
        {
            "format": 1, "id": "bruise", "title": "A bruise", "objectives": ["one"],
            "client": {"role": "Rider", "age": 30}, "mechanism": "A blow.", "injury": "contusion",
            "tissue": {"kind": "muscle", "name": "rectus", "region": "thigh", "side": "right"},
            "visits": full, **more,
        }
    )  # fmt: skip


def _seen(findings: dict[str, Any]) -> dict[str, Any]:
    known = {"swelling": "none", "knee_flexion": 72, **findings}
    return {name: value for name, value in known.items() if value is not None}
