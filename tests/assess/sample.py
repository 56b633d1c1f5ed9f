"""A miniature course with judgements set by hand, so that assessing is seen apart from judging."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from typing import Any

from builder.assess.material import Material
from builder.model.card import Card
from builder.model.case import Case
from builder.model.course import CourseFile, SiteConfig
from builder.model.fact import FactBook, ScreeningBook
from builder.model.judgement import (
    Asked,
    DoseJudgement,
    Fired,
    OptionJudgement,
    PhaseJudgement,
    Reason,
    SessionJudgement,
    SeverityJudgement,
    VisitJudgement,
    WouldChange,
)
from builder.model.library import Content, Course
from builder.model.rule import FirstAction
from builder.model.tables import PhaseBook, ReferenceBook, SeverityBook
from tests.assess.words import WORDS

SECRET = bytes(range(32))
FACTS: dict[str, dict[str, Any]] = {
    "injury": {
        "kind": "one_of",
        "label": "Injury",
        "values": ["contusion"],
        "words": {"contusion": "bruise"},
    },
    "haematoma": {"kind": "one_of", "label": "Bleeding", "values": ["intramuscular"]},
    "severity": {"kind": "scale", "label": "Severity", "values": ["mild", "moderate", "severe"]},
    "swelling": {"kind": "scale", "label": "Swelling", "values": ["falling", "rising"]},
    "knee_flexion": {"kind": "number", "label": "Knee bend", "unit": "°"},
    "tingling": {"kind": "yes_no", "label": "Tingling"},
}
WRITTEN: dict[str, dict[str, Any]] = {
    "site": {
        "kind": "one_of",
        "label": "Where",
        "values": ["on", "remote"],
        "words": {"on": "on the injury"},
    },
    "minutes": {"kind": "number", "label": "Time", "unit": "min", "worse_when": "higher"},
    "barrier": {"kind": "yes_no", "label": "Cloth", "words": {"yes": "cloth between"}},
    "urgency": {"kind": "scale", "label": "How soon", "values": ["days", "emergency"]},
}


def facts_of(written: dict[str, dict[str, Any]]) -> dict[str, dict[str, Any]]:
    """The declarations with what every fact must say and these tests do not look at."""
    return {name: {"group": "sign", "worse_when": "neither", **one} for name, one in written.items()}


def card(name: str, /, **changed: object) -> Card:
    """A card that is OK everywhere."""
    row = {
        "phase": ["acute", "none"],
        "answer": "ok",
        "why": "Because it helps.",
        "source": ["ryan"],
        "strength": "study",
    }
    plain = {
        "format": 1,
        "id": name,
        "name": f"The {name}",
        "kind": "technique",
        "hands_on": True,
        "serves": ["limit"],
        "what": "Something.",
        "ladder": {"minutes": [5, 10, 30, 45], "urgency": [5, 10, 30, 45]},
        "baseline": [row],
    }
    return Card.model_validate(plain | changed)


CLOCK = {"tissue": "muscle", "acute_until": 72, "early_repair_until": 240, "late_repair_until": 504}
PHASES = {
    "format": 1,
    "does_not_apply": {"injury": "contusion"},
    "clocks": [{**CLOCK, "severity": one, "source": ["ryan"]} for one in ("mild", "moderate", "severe")],
    "signs": [],
    "aims": {"acute": "limit", "early_repair": "clear", "late_repair": "restore", "remodelling": "restore"},
    "aim_words": {
        "limit": "limit it",
        "clear": "clear it",
        "ask": "ask",
        "refer": "refer",
        "restore": "mend",
    },
    "phase_words": {
        "acute": "acute",
        "early_repair": "early",
        "late_repair": "late",
        "remodelling": "last",
        "none": "does not apply",
    },
    "source": ["ryan"],
}
GRADES = {"format": 1, "words": {"mild": "mild", "moderate": "middling", "severe": "bad"}, "tables": {}}
SCREENING = {"lower": {"name": "Lower limb", "date": "2026-11-01", "covers": ["tingling"]}}
SOURCES = {
    "ryan": {"cite": "Ryan JB et al. Am J 1991", "year": 1991},
    "habit": {"cite": "Common practice, no source"},
}


def content() -> Content:
    """Four cards, a handful of facts, one clock."""
    refer = card("refer", kind="action", hands_on=False, serves=["refer"])
    cards = (card("cold"), card("rub"), card("wrap"), refer)
    return Content(
        facts=FactBook.model_validate({"format": 1, "facts": facts_of(FACTS), "written": facts_of(WRITTEN)}),
        screening=ScreeningBook.model_validate({"format": 1, "sets": SCREENING}),
        phases=PhaseBook.model_validate(PHASES),
        severity=SeverityBook.model_validate(GRADES),
        references=ReferenceBook.model_validate({"format": 1, "sources": SOURCES}),
        cards={one.id: one for one in cards},
        rules={},
        boards={},
        words=WORDS,
    )


def case(name: str, count: int = 2, /, **changed: object) -> Case:
    """A bruised thigh over some visits, each with one option chosen and two wrong ones."""
    return Case.model_validate(
        {
            "format": 1,
            "id": name,
            "title": f"Secret title of {name}",
            "objectives": ["choose"],
            "client": {"role": "Acrobat", "age": 24},
            "mechanism": f"A pole hit {name}",
            "injury": "contusion",
            "tissue": {"kind": "muscle", "name": "thigh", "region": "thigh", "side": "right"},
            "severity": "moderate",
            "visits": [visit(number) for number in range(1, count + 1)],
        }
        | changed
    )


def visit(number: int, /, **changed: object) -> dict[str, Any]:
    """One visit as an author writes it."""
    return {
        "id": f"v{number}",
        "title": f"Secret visit {number}",
        "since_injury": f"{30 * number} h",
        "story": f"It hurts, day {number}.",
        "consent": "yes",
        "screen": {"set": "lower"},
        "findings": {"knee_flexion": Decimal(72), "swelling": "rising"},
        "phase": "acute",
        "chosen": [
            {"card": "cold", "written": {"barrier": "yes", "minutes": Decimal(10)}, "because": "Secret word."}
        ],
        "wrong": [{"card": "rub"}, {"card": "wrap", "site": "remote"}],
        "next": f"Secret ending {number} told afterwards.",
    } | changed


def course(cases: list[Case], /, **changed: object) -> Course:
    """A course that tests every given case, unless told otherwise."""
    plain = {
        "format": 1,
        "id": "course",
        "title": "A course",
        "level": "any",
        "provider": {"name": "P", "address": "A", "contact": "C"},
        "instructor": {"name": "I", "credentials": "C"},
        "audience": {"who": "W", "licence": "L"},
        "description": "D",
        "subjects": "S",
        "delivery": "live",
        "objectives": [{"id": "choose", "text": "Choose."}, {"id": "refer", "text": "Refer."}],
        "tests": [a_test([one.id for one in cases])],
        "requirements": {"test": "final", "attendance": "90 %"},
        "disclosures": "None.",
    }
    site = {"format": 1, "caution": "c", "short_caution": "s", "unreviewed": "u", "colours": {}}
    return Course(
        file=CourseFile.model_validate(plain | changed),
        cases={one.id: one for one in cases},
        stations={},
        lessons={},
        site=SiteConfig.model_validate(site),
        content=content(),
    )


def a_test(cases: list[str], /, **changed: object) -> dict[str, Any]:
    """A test of one option question in each of two versions."""
    return {
        "id": "final",
        "title": "The test",
        "cases": cases,
        "plan": [{"objective": "choose", "topic": "option", "count": 1}],
        "seed": "any words",
        "pass_mark": Fraction(3, 4),
    } | changed


def fired(name: str, effect: str, /, **changed: object) -> Fired:
    """A rule that surely fires."""
    plain: dict[str, Any] = {
        "id": name,
        "title": f"Title of {name}",
        "truth": "fires",
        "effect": effect,
        "why": f"Why {name}.",
        "strength": "study",
        "source": ("ryan",),
        "contested": None,
        "reviewed": False,
    }
    return Fired(**plain | changed)


def judged_option(name: str, answer: str = "ok", /, **changed: object) -> OptionJudgement:
    """An option that is right when OK."""
    plain: dict[str, Any] = {
        "card": name,
        "site": "on",
        "written": {},
        "answer": answer,
        "at_worst": answer,
        "serves_aim": True,
        "right": answer == "ok",
        "ask": (),
        "rules": (fired(f"rule_{name}", answer),),
        "change": "time at most 20 min" if answer == "change" else None,
        "would_change": (WouldChange({"minutes": Decimal(40)}, "change", "time: 40 min"),)
        if answer == "ok"
        else (),
    }
    return OptionJudgement(**plain | changed)


DOSES: dict[Decimal, Any] = {
    Decimal(5): "ok",
    Decimal(10): "ok",
    Decimal(30): "change",
    Decimal(45): "change",
}
REFERRED = SessionJudgement(
    "refer",
    "emergency",
    (),
    (fired("flag", "emergency"), fired("milder", "days")),
    FirstAction(do=("Call.",), avoid=("Do not rub.",)),
)
ASKED = SessionJudgement(
    "ask_first", None, (Asked("consent", "May I?", ()),), (fired("flag", "emergency", truth="open"),), None
)


def judged_visit(name: str, /, **changed: object) -> VisitJudgement:
    """A visit that goes on, surely acute, with the cold right and the two others wrong."""
    plain: dict[str, Any] = {
        "visit": name,
        "phase": PhaseJudgement(("acute",), (Reason("By the calendar: acute.", ("hours",), ("ryan",)),)),
        "severity": SeverityJudgement(("moderate",), None, False, ()),
        "session": SessionJudgement("go_on", None, (), (), None),
        "aims": ("limit",),
        "chosen": (judged_option("cold"),),
        "wrong": (judged_option("rub", "not_yet"), judged_option("wrap", "barred")),
        "cards": {},
        "doses": (DoseJudgement(0, "minutes", Decimal(10), DOSES),),
    }
    return VisitJudgement(**plain | changed)


def judged(cases: list[Case]) -> dict[str, tuple[VisitJudgement, ...]]:
    """Every visit of every case judged the same."""
    return {one.id: tuple(judged_visit(visit.id) for visit in one.visits) for one in cases}


def material(written: dict[str, Any] | None = None, /, **changed: object) -> Material:
    """The first visit of a case, as written and as judged with these changes."""
    one = case("alpha", visits=[visit(1, **(written or {}))])
    return Material(course([one]), one, one.visits[0], judged_visit("v1", **changed), alone=True)
