"""A practice case of two visits and a test of two versions, as the assessing side would hand them over."""

from typing import Any

from builder.model.paper import Paper, PaperQuestion, PublishedTest, Scene
from builder.model.practice import PracticeCase, PracticeQuestion, PracticeVisit, Timeline

OPTIONS: dict[str, tuple[str, tuple[str, ...]]] = {
    "glide": ("Light gliding strokes", ("on the injury", "time 5 min", "pressure 2 of 5")),
    "pack": ("Cold pack, then felt pad and wrap", ("time 20 min", "cloth between", "pad 2½ times the area")),
    "rub": ("Cross-fibre friction", ("on the injury", "time 3 min", "warmed first")),
}


PHASES_SHOWN: dict[str, Any] = {
    "p1": ("acute", ()),
    "p2": ("early repair (subacute)", ()),
    "p3": ("remodelling", ()),
}
WHY, RESTS = (
    "30 hours after a moderate contusion, with swelling still rising.",
    "Own default · common practice",
)
PHASES_SAID = [
    {"option": "p1", "mark": "right", "word": "Right", "reason": WHY, "rests_on": RESTS},
    {
        "option": "p2",
        "mark": "wrong",
        "word": "Not this",
        "reason": f"It is acute. {WHY}",
        "rests_on": RESTS,
    },
    {
        "option": "p3",
        "mark": "wrong",
        "word": "Not this",
        "reason": f"It is acute. {WHY}",
        "rests_on": RESTS,
    },
]
CHANGE = "If the swelling had begun to fall, light gliding beside the site would be OK as written."
OPTIONS_SAID = [
    {
        "option": "glide",
        "mark": "not_yet",
        "word": "Not yet",
        "reason": "With swelling rising, any hand on the area can add to it.",
        "rests_on": "Common practice",
        "would_change": (CHANGE,),
    },
    {
        "option": "pack",
        "mark": "ok",
        "word": "OK as written",
        "reason": "Swelling is rising: contain it before anything else.",
        "rests_on": "Dubois 2020 · review",
        "contested": "Often taught to shorten healing. Others: comfort only.",
    },
    {
        "option": "rub",
        "mark": "barred",
        "word": "Not here",
        "reason": "There is no fibrous tissue to work on.",
    },
]


def scene(title: str = "The next afternoon") -> Scene:
    """A scene with a finding of each kind that has a drawing."""
    cells = [
        {"label": "Swelling", "value": "still rising", "fact": "swelling_trend"},
        {"label": "Knee bends to", "value": "72°", "fact": "knee_bend", "number": "72"},
        {"label": "Warmth", "value": "clear", "fact": "heat"},
        {"label": "Pain at rest", "value": "5 of 10", "fact": "pain", "number": "5"},
    ]
    return Scene.model_validate(
        {
            "title": title,
            "client": "Acrobat base, 24 · right thigh · 30 hours ago",
            "story": "“It throbbed all night, and the bruise has grown.”",
            "board": cells,
            "screen": "Lower-limb screen with cold: all no. Consent given.",
        }
    )


def question(name: str, stem: str, titles: dict[str, Any], *, kind: str = "one") -> PaperQuestion:
    """A question with options by id."""
    options = [{"id": key, "title": title, "chips": chips} for key, (title, chips) in titles.items()]
    shown = {"id": name, "kind": kind, "stem": stem, "hint": "Choose one. Each is meant exactly as written."}
    return PaperQuestion.model_validate({**shown, "scene": scene(), "options": options})


def phase_question() -> PracticeQuestion:
    """Which phase: two wrong answers that share their reason."""
    return PracticeQuestion.model_validate(
        {
            "topic": "phase",
            "question": question("q1", "Which phase is this?", PHASES_SHOWN),
            "right": ("p1",),
            "feedback": PHASES_SAID,
            "reviewed": False,
        }
    )


def option_question(name: str, *, kind: str = "one") -> PracticeQuestion:
    """What to do: one right, two not yet, one of them contested."""
    return PracticeQuestion.model_validate(
        {
            "topic": "option",
            "question": question(name, "What do you do now?", OPTIONS, kind=kind),
            "right": ("pack",),
            "feedback": OPTIONS_SAID,
            "reviewed": False,
        }
    )


def timeline() -> Timeline:
    """Thirty hours after the injury, with one visit before."""
    bands = [
        {"phase": "acute", "word": "acute", "start": 0, "end": 72},
        {"phase": "early_repair", "word": "early repair (subacute)", "start": 72, "end": 504},
        {"phase": "late_repair", "word": "late repair", "start": 504, "end": 1008},
        {"phase": "remodelling", "word": "remodelling", "start": 1008, "end": 1512},
    ]
    words = "acute until 3 days; early repair until 21 days; late repair until 42 days. Today: 30 hours."
    return Timeline.model_validate({"bands": bands, "earlier": (6,), "today": 30, "words": words})


def visit(name: str, title: str, questions: tuple[PracticeQuestion, ...], **more: object) -> PracticeVisit:
    """A visit of the practice case."""
    given = {"id": name, "scene": scene(title), "questions": questions, "timeline": timeline()}
    return PracticeVisit.model_validate({**given, **more})


def practice_case(name: str = "landing") -> PracticeCase:
    """Two visits: two questions on the first, one of many on the second."""
    after = "The pad felt too tight by evening; the client took it out and kept the wrap."
    first = visit("v1", "The next afternoon", (phase_question(), option_question("q2")), next=after)
    many = option_question("q3", kind="many")
    second = visit("v2", "Nine days later", (many,), next="Next morning the swelling had settled.")
    return PracticeCase(
        id=name,
        title="Landing on the rig",
        subtitle="Acrobat base, 24 · front of the right thigh",
        mechanism="The flyer's heel came down on the base's thigh.",
        visits=(first, second),
    )


def paper(version: str) -> Paper:
    """One version: two single choices and one of many, ids as opaque as the real ones."""
    questions = tuple(
        question(f"q{version.lower()}{number}f", f"What do you do now? ({number})", OPTIONS, kind=kind)
        for number, kind in enumerate(("one", "one", "many"), start=1)
    )
    return Paper(test="final", title="Final test", version=version, language="en", questions=questions)


def published_test() -> PublishedTest:
    """A test with versions A and B."""
    return PublishedTest(
        test="final", title="Final test", edition="k7q2m9xa", papers=(paper("A"), paper("B"))
    )
