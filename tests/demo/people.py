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
    """One try: the person's code, when it began on their clock, and the slips."""

    code: str
    began: str
    slips: tuple[Slip, ...] = ()


PHASES = Slip("phase", "phase", 3)
DOSES = Slip("choose", "dose", 2)
DOSE = Slip("choose", "dose")
PHASE = Slip("phase", "phase")

SITTINGS = (
    Sitting("QZVNRBLAD", "2026-04-19T14:47:10"),
    Sitting("4VXQX8V7R", "2026-04-19T14:47:31", (DOSE,)),
    Sitting("37QH7JVQH", "2026-04-19T14:48:02", (PHASE, DOSE)),
    Sitting("4HWLR4B3H", "2026-04-19T14:46:55", (PHASES, DOSES)),
    Sitting("C4BJDH4Q2", "2026-04-26T19:12:40", (DOSE,)),
    Sitting("TCQTQ6PVL", "2026-04-19T14:47:45", (PHASE,)),
    Sitting("B57V9P9Y3", "2026-04-19T14:49:20", (Slip("refer", "session"),)),
    Sitting("3GJPXAN82", "2026-04-19T14:47:05", (Slip("choose", "session"),)),
    Sitting("MQ96BNG34", "2026-04-19T14:48:38"),
)
