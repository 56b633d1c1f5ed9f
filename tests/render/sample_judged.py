"""A judged course for the instructor's side: two cases, a station and keys, judged by hand."""

from dataclasses import replace
from decimal import Decimal
from typing import Any

from builder.model.card import Contested
from builder.model.case import Case
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
from builder.model.key import Key, KeyAnswer, KeyRing
from builder.model.library import Course
from builder.model.rule import FirstAction
from builder.model.station import Station
from tests.render.sample_cases import published_test
from tests.render.samples import course

EARLY = Contested(point="early_friction", taught="Only on fibrous tissue.", other="One school works early.")


def visits() -> list[dict[str, object]]:
    """The next afternoon, and the day after it was hurt again."""
    chosen = {"card": "cold_pack", "written": {"minutes": Decimal(20)}, "because": "Nothing else today."}
    first: dict[str, object] = {
        "id": "v1",
        "title": "The next afternoon",
        "since_injury": "30 h",
        "story": "It throbbed all night.",
        "consent": "yes",
        "findings": {"swelling_trend": "rising", "knee_bend": Decimal(72)},
        "phase": "acute",
        "chosen": [chosen],
        "wrong": [{"card": "friction", "written": {"minutes": Decimal(9), "warmed": "no"}}],
        "next": "The swelling settled.",
    }
    again: dict[str, object] = {
        "since_injury": "100 h",
        "since_reinjury": "20 h",
        "chosen": [{"card": "refer"}],
        "wrong": [],
    }
    return [first, {**first, **again, "id": "v2", "title": "Hurt again"}]


def case(name: str, title: str = "Landing on the rig") -> Case:
    """A bruised thigh over two visits, the second after it was hurt again."""
    return Case.model_validate(
        {
            "format": 1,
            "id": name,
            "title": title,
            "objectives": ["phases"],
            "client": {"role": "Acrobat base", "age": 24, "goals": "To fly on Friday"},
            "mechanism": "A heel came down on the thigh",
            "injury": "contusion",
            "tissue": {"kind": "muscle", "name": "thigh", "region": "thigh", "side": "right"},
            "severity": "moderate",
            "history": {"pain": Decimal(3)},
            "visits": visits(),
        }
    )


def fired(name: str, effect: str, **changed: object) -> Fired:
    """A rule that surely fires and that no clinician has reviewed."""
    plain: dict[str, Any] = {
        "title": f"Title of {name}",
        "truth": "fires",
        "why": f"Why {name}.",
        "strength": "guideline",
        "source": ("example_2020",),
        "contested": None,
        "reviewed": False,
    }
    return Fired(**plain | {"id": name, "effect": effect} | changed)


def option(card: str, answer: str = "ok", **changed: object) -> OptionJudgement:
    """An option that serves the aim and is right when OK."""
    plain: dict[str, Any] = {
        "site": "on",
        "written": {},
        "at_worst": answer,
        "serves_aim": True,
        "right": answer == "ok",
        "ask": (),
        "rules": (fired(f"baseline.{card}", answer),),
        "change": None,
    }
    return OptionJudgement(**plain | {"card": card, "answer": answer} | changed)


def wrong_option() -> OptionJudgement:
    """Friction that surely must change, and may not be allowed at all."""
    calf = fired("rf_calf_pain", "barred", truth="open")
    return option(
        "friction",
        "change",
        at_worst="barred",
        serves_aim=False,
        rules=(fired("baseline.friction", "change", contested=EARLY, change="warmed first"), calf),
        change="warmed first",
        ask=(Asked("calf_pain", "Does the calf hurt without a cause?", ("rf_calf_pain",)),),
        would_change=(WouldChange({"pain": Decimal(1)}, "not_yet", "pain at rest: 1 of 10"),),
    )


def judged_visit(**changed: object) -> VisitJudgement:
    """The first visit: acute, go on, cold is right and friction is not."""
    cards = {"cold_pack": option("cold_pack"), "friction": option("friction", "not_yet")}
    reasons = (Reason("By the calendar: acute.", ("hours",), ("common_practice",)),)
    plain: dict[str, Any] = {
        "visit": "v1",
        "phase": PhaseJudgement(("acute",), reasons, "early_repair", Decimal(42)),
        "severity": SeverityJudgement(("moderate",), None, False, (Reason("As declared."),)),
        "session": SessionJudgement("go_on", None, (), (), None),
        "aims": ("limit",),
        "chosen": (option("cold_pack"),),
        "wrong": (wrong_option(),),
        "cards": cards | {"refer": option("refer", serves_aim=False, right=False)},
        "doses": (DoseJudgement(0, "minutes", Decimal(20), {Decimal(20): "ok", Decimal(40): "change"}),),
    }
    return VisitJudgement(**plain | changed)


def referring_visit() -> VisitJudgement:
    """The second visit: stop and refer at once."""
    act = FirstAction(do=("Loosen any wrap",), avoid=("No ice",))
    rule = fired("rf_pulse_gone", "emergency")
    refer = option("refer", written={"urgency": "emergency"})
    return judged_visit(
        visit="v2",
        phase=PhaseJudgement(("none",), ()),
        session=SessionJudgement("refer", "emergency", (), (rule,), act),
        aims=("refer",),
        chosen=(refer,),
        wrong=(),
        doses=(),
    )


def station() -> Station:
    """A station of two criteria: at most nine points, seven to pass at 75 %."""
    levels = ["Not at all.", "In part.", "Well.", "Well, and says why."]
    return Station.model_validate(
        {
            "format": 1,
            "id": "friction_station",
            "title": "Friction",
            "case": "landing",
            "visit": "v1",
            "minutes": 12,
            "participant": "Show friction.\n\nThink aloud.",
            "practice_client": "Say once: that is sharp.",
            "examiner": "Do not help.",
            "objectives": ["hands"],
            "criteria": [
                {"id": "agree", "title": "Agrees", "levels": levels},
                {"id": "work", "title": "Works", "levels": levels, "weight": 2},
            ],
            "automatic_fails": [{"id": "went_on", "seen": "Went on after stop."}],
            "pass_mark": "75 %",
        }
    )


def ring() -> KeyRing:
    """Keys for both versions of the sample test: the pack is right, in the last question the strokes too."""
    return KeyRing.model_validate(
        {
            "test": "final",
            "edition": published_test().edition,
            "key_edition": "p4w8z3tn",
            "pass_mark": "75 %",
            "tries": 2,
            "keys": [Key(test="final", version=name, answers=_answers(name.lower())) for name in "AB"],
        }
    )


def _answers(letter: str) -> tuple[KeyAnswer, ...]:
    return tuple(
        KeyAnswer(
            question=f"q{letter}{number}f",
            kind="many" if number == 3 else "one",
            right=("glide", "pack") if number == 3 else ("pack",),
            options=("glide", "pack", "rub"),
            policy="plus_minus" if number == 3 else "exact",
            must_pass=number == 2,
            objective="phases",
            topic="option",
            case="hidden_case",
            visit="v1",
            reasons={one: f"Word: reason for {one}. [rule_{one}]" for one in ("glide", "pack", "rub")},
        )
        for number in (1, 2, 3)
    )


def judged_course(**more: object) -> Course:
    """The sample course with a practice case, a tested case and a station; keywords replace parts of it."""
    objectives = [
        {"id": "phases", "text": "Tell the phase of healing from time and signs."},
        {"id": "hands", "text": "Work across the fibres."},
    ]
    items = [
        ("09:00", "10:30", "How tissue heals", "lecture", ["phases"]),
        ("10:30", "10:45", "Break", "break", []),
        ("10:45", "11:15", "Written test", "test", ["phases"]),
    ]
    agenda = [
        {"day": 1, "start": start, "end": end, "title": title, "kind": kind, "objectives": served}
        for start, end, title, kind, served in items
    ]
    made = course(objectives=objectives, agenda=agenda, **more)
    cases = {
        name: case(name, title) for name, title in (("landing", "The landing"), ("hidden_case", "The ring"))
    }
    return replace(made, cases=cases, stations={"friction_station": station()})


def judged() -> dict[str, tuple[VisitJudgement, ...]]:
    """Both cases judged alike."""
    return dict.fromkeys(("landing", "hidden_case"), (judged_visit(), referring_visit()))
