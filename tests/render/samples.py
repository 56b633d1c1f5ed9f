"""A small course, practice case and test to render, all invented, in the circus and its clinic."""

from pathlib import Path
from typing import Any

from builder.model.card import Card
from builder.model.course import CourseFile, SiteConfig
from builder.model.fact import FactBook, ScreeningBook
from builder.model.library import Content, Course
from builder.model.rule import Rule
from builder.model.tables import PhaseBook, ReferenceBook, SeverityBook
from builder.read.words import read_words

ROOT = Path(__file__).parents[2]
PHASE_WORDS = {
    "acute": "acute",
    "early_repair": "early repair (subacute)",
    "late_repair": "late repair",
    "remodelling": "remodelling",
    "none": "does not apply",
}
AIM_WORDS = {
    "limit": "limit the injury",
    "clear": "clear the swelling",
    "restore": "restore the tissue",
    "ease": "ease the complaint",
    "ask": "ask first",
    "refer": "stop and refer",
}
LESSON = """
Tissue heals in *phases*. What helps in one can harm in another.

[phases]

## Which hand, when

| phase | what is going on | what helps |
| --- | --- | --- |
| acute | bleeding, swelling | contain it |
| remodelling | scar takes load | move it along its lines |

!!! warning "Two minutes"
    Friction that still hurts more after two minutes is stopped.

[card friction]

[figure friction]

[figure landing]

[case landing]

[test final]

[flags]
"""


def words() -> dict[str, str]:
    """The interface words as shipped."""
    return read_words(ROOT / "content").texts or {}


def fact(kind: str, label: str, **more: object) -> dict[str, Any]:
    """A declared fact, as its file would say it."""
    return {"kind": kind, "label": label, "group": "sign", "worse_when": "higher", **more}


def facts() -> FactBook:
    """The facts of the sample: one of each kind that has a drawing, and two red flags."""
    trend = fact(
        "scale", "Swelling", values=("none", "falling", "steady", "rising"), words={"rising": "still rising"}
    )
    return FactBook.model_validate(
        {
            "format": 1,
            "facts": {
                "swelling_trend": trend,
                "knee_bend": fact("number", "Knee bends to", unit="°", low=0, high=150),
                "pain": fact("number", "Pain at rest", unit="of 10", low=0, high=10),
                "heat": fact("scale", "Warmth", values=("none", "slight", "clear")),
                "calf_pain": fact("yes_no", "Calf pain", question="Does the calf hurt without a cause?"),
                "pulse_gone": fact("yes_no", "Pulse at the foot", question="Is the pulse at the foot gone?"),
            },
            "written": {
                "minutes": fact("number", "Time", unit="min"),
                "pressure": fact("number", "Pressure", unit="of 5"),
                "warmed": fact("yes_no", "Warmed first", words={"yes": "warmed first", "no": "not warmed"}),
            },
        }
    )


def row(phases: tuple[str, ...], answer: str, **more: object) -> dict[str, Any]:
    """A row of a card's baseline, common practice unless it says more."""
    given = {"why": "Shown as an example.", "source": ("common_practice",), "strength": "common_practice"}
    return {"phase": phases, "answer": answer, **given, **more}


EARLY = {
    "point": "early_friction",
    "taught": "Only on fibrous tissue.",
    "other": "One school works early.",
}
NEAR, AWAY = ("on",), ("adjacent", "proximal", "distal", "remote")
LIMITS = {"minutes": {"at_most": 5}, "pressure": {"at_most": 3}, "warmed": "yes"}
FRICTION: dict[str, Any] = {
    "name": "Cross-fibre friction",
    "kind": "technique",
    "hands_on": True,
    "serves": ("restore",),
    "what": "A fingertip and the skin move as one, across the fibres, on the exact spot.",
    "stroke": "across",
    "who_moves": "therapist",
    "muscle": "slack",
    "usual": {"minutes": 2, "pressure": 2, "warmed": "yes"},
    "baseline": (
        row(("acute", "early_repair"), "not_yet", site=NEAR, contested=EARLY),
        row(("late_repair",), "not_yet", site=NEAR),
        row(("remodelling",), "ok", site=NEAR, limits=LIMITS, why="The firm band is the place for it."),
        row(("none",), "not_yet", site=NEAR),
        row(tuple(PHASE_WORDS), "barred", site=AWAY, why="Elsewhere there is nothing for it to work on."),
    ),
    "stop_if": ("Pain still rising after two minutes", "Bruise or heat"),
    "cautions": ("Never with thinned blood",),
    "evidence": {"speaks_for": "Wide use.", "speaks_against": "Two small trials and no certainty."},
}
COLD: dict[str, Any] = {
    "name": "Cold pack",
    "kind": "technique",
    "hands_on": False,
    "serves": ("limit",),
    "what": "A cold pack over a damp cloth, on the area and a hand's width around.",
    "stroke": "still",
    "baseline": (row(tuple(PHASE_WORDS), "ok"),),
}
REFER: dict[str, Any] = {
    "name": "Refer",
    "kind": "action",
    "hands_on": False,
    "serves": ("refer",),
    "what": "Stop, explain, and send the client on with a note.",
    "baseline": (row(tuple(PHASE_WORDS), "ok"),),
}


def cards() -> dict[str, Card]:
    """One technique with limits and a contested cell, one without, one action."""
    made = {"friction": FRICTION, "cold_pack": COLD, "refer": REFER}
    return {name: Card.model_validate({"format": 1, "id": name, **one}) for name, one in made.items()}


def flag(name: str, title: str, urgency: str, **action: object) -> Rule:
    """A rule that stops the session."""
    examples = [{"fires": "yes", "given": {name: "yes"}}, {"fires": "no", "given": {name: "no"}}]
    effect = {"urgency": urgency} | ({"first_action": action} if action else {})
    return Rule.model_validate(
        {
            "format": 1,
            "id": f"rf_{name}",
            "title": title,
            "when": {name: "yes"},
            "session": effect,
            "why": "It can be the sign of something that hands cannot help.",
            "source": ["example_2020"],
            "strength": "guideline",
            "examples": examples,
        }
    )


def rules() -> dict[str, Rule]:
    """Two red flags of different urgency."""
    gone = flag("pulse_gone", "No pulse at the foot", "emergency", do=["Loosen any wrap"], avoid=["No ice"])
    calf = flag("calf_pain", "Calf pain without a cause", "same_day", do=["Rest the leg"])
    return {rule.id: rule for rule in (calf, gone)}


def content() -> Content:
    """The clinical content of the sample."""
    book = {"format": 1, "does_not_apply": {"calf_pain": "yes"}, "clocks": (), "signs": (), "source": ()}
    words_of = {"phase_words": PHASE_WORDS, "aim_words": AIM_WORDS}
    aims = {
        "acute": "limit",
        "early_repair": "clear",
        "late_repair": "restore",
        "remodelling": "restore",
        "none": "ease",
    }
    sources = {
        "common_practice": {"cite": "Common practice, no source"},
        "example_2020": {"cite": "Example A. A made-up guideline for this sample.", "year": 2020},
    }
    grades = {"mild": "mild", "moderate": "moderate", "severe": "severe"}
    return Content(
        facts=facts(),
        screening=ScreeningBook(format=1, sets={}),
        phases=PhaseBook.model_validate({**book, **words_of, "aims": aims}),
        severity=SeverityBook.model_validate(
            {"format": 1, "words": grades, "tables": {}, "background": BACKGROUND}
        ),
        references=ReferenceBook.model_validate({"format": 1, "sources": sources}),
        cards=cards(),
        rules=rules(),
        boards={},
        words=words(),
    )


BACKGROUND: dict[str, Any] = {
    "score": {
        "title": "A made-up score",
        "people": "Nobody.",
        "rows": [{"name": "First", "text": "A sign.", "points": 1}, {"name": "Second", "text": "No sign."}],
        "source": ["example_2020"],
        "strength": "review",
        "contested": {"point": "score", "taught": "It clears.", "other": "It clears nobody."},
        "note": "Reported.",
    }
}
FILE: dict[str, Any] = {
    "format": 1,
    "id": "lanternfall",
    "title": "Lanternfall Clinic course",
    "number": "LC-01",
    "level": "Intermediate",
    "provider": {
        "name": "Lanternfall Clinic",
        "address": "Ring 1, Lanternfall",
        "contact": "desk@lanternfall.example",
    },
    "instructor": {"name": "Ada Quill", "credentials": "LMT"},
    "audience": {
        "who": "Therapists of the touring circus.",
        "licence": "A licence to treat soft tissue.",
    },
    "description": "What suits a bruise, a pull or a sprain, from day to day.",
    "subjects": "Soft-tissue injuries",
    "delivery": "Live",
    "objectives": [{"id": "phases", "text": "Tell the phase of healing from time and signs."}],
    "lessons": [{"file": "phases.md", "title": "Tissue heals in phases"}],
    "practice": [{"id": "first", "title": "First cases", "cases": ["landing"]}],
    "requirements": {"test": "final", "attendance": "100 %"},
    "positions": {"early_friction": "Not before remodelling."},
    "policies": {"retake": "Twice."},
    "disclosures": "None.",
    "references": ["example_2020"],
}
SITE: dict[str, Any] = {
    "format": 1,
    "caution": "Education, not medical advice. Work within licence and local law; stop at a red flag.",
    "short_caution": "Education, not medical advice. On a red flag: stop and refer.",
    "unreviewed": "These rules are not yet reviewed by a clinician.",
    "colours": {"light": {}, "dark": {}},
}


def course(**more: object) -> Course:
    """The sample course; keywords replace parts of its file."""
    return Course(
        file=CourseFile.model_validate({**FILE, "tests": [sample_test()], **more}),
        cases={},
        stations={},
        lessons={"phases": LESSON},
        site=SiteConfig.model_validate(SITE),
        content=content(),
    )


def sample_test() -> dict[str, Any]:
    """The test as the course file plans it."""
    plan = [{"objective": "phases", "topic": "phase", "count": 1}]
    return {
        "id": "final",
        "title": "Final test",
        "cases": ["hidden_case"],
        "plan": plan,
        "seed": "s",
        "pass_mark": "75 %",
    }
