"""Who sat the demonstration's test, when, and what they got wrong; all of them are invented."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Slip:
    """Questions answered wrongly: of one objective and topic, so many."""

    objective: str
    topic: str
    count: int = 1


@dataclass(frozen=True)
class Sitting:
    """One try: the person's code, when it began on their clock, what they write in words, and the slips."""

    code: str
    began: str
    words: str
    slips: tuple[Slip, ...] = ()


PHASES = Slip("phase", "phase", 3)
DOSES = Slip("choose", "dose", 2)
DOSE = Slip("choose", "dose")
PHASE = Slip("phase", "phase")
OWN = Slip("choose", "written")

SITTINGS = (
    Sitting(
        "QZVNRBLAD",
        "2026-04-19T14:47:10",
        "No work today. You have a fever, so please see a doctor today. Your hour is kept for you.",
    ),
    Sitting(
        "4VXQX8V7R",
        "2026-04-19T14:47:31",
        "I won’t treat you while you have a fever. A doctor should look at it today.",
        (DOSE,),
    ),
    Sitting(
        "37QH7JVQH",
        "2026-04-19T14:48:02",
        "Today I keep my hands off, because of the fever. See a doctor; this costs you nothing.",
        (PHASE, DOSE),
    ),
    Sitting(
        "4HWLR4B3H",
        "2026-04-19T14:46:55",
        "We make it five minutes and only the other shoulder, then you go and lie down.",
        (PHASES, DOSES, OWN),
    ),
    Sitting(
        "C4BJDH4Q2",
        "2026-04-26T19:12:40",
        "Not today. With a fever since last night you should be seen by a doctor today. We make a new date.",
        (DOSE,),
    ),
    Sitting(
        "TCQTQ6PVL",
        "2026-04-19T14:47:45",
        "No hands today. Fever means that your body fights something, and a doctor has to see it today.",
        (PHASE, OWN),
    ),
    Sitting(
        "B57V9P9Y3",
        "2026-04-19T14:49:20",
        "Sorry, not with a fever. A doctor looks at you today, and then we find a new hour.",
        (Slip("refer", "session"),),
    ),
    Sitting(
        "3GJPXAN82",
        "2026-04-19T14:47:05",
        "I must not work on a man with a fever! You may fall badly ill. See a doctor today for it.",
        (Slip("choose", "session"),),
    ),
    Sitting(
        "MQ96BNG34",
        "2026-04-19T14:48:38",
        "There is no massage today, since you have had a fever from last night on. Please be seen today. "
        "I keep your ten minutes for you.",
    ),
)
