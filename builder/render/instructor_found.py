"""What was known on a visit, as label and value: what a participant sees too, nothing that is judged."""

from __future__ import annotations

from collections.abc import Mapping

from builder.model.case import Case, Visit, Written
from builder.model.span import exact_span
from builder.render.maker import Maker

Found = tuple[str, str]


def client_line(made: Maker, case: Case) -> str:
    """Who the client is and what is hurt."""
    tissue = made.say(f"q_side_{case.tissue.side}", tissue=case.tissue.name)
    return f"{case.client.role}, {case.client.age} · {tissue}"


def when_line(made: Maker, visit: Visit) -> str:
    """How long ago it was hurt, and hurt again."""
    words = made.course.content.words
    first = exact_span(words, visit.since_injury)
    if visit.since_reinjury is None:
        return made.say("q_after", span=first)
    return made.say("q_after_again", span=exact_span(words, visit.since_reinjury), first=first)


def found(made: Maker, case: Case, visit: Visit) -> list[Found]:
    """Every recorded finding of a visit with its history, in the order of the facts file."""
    basics = {"injury": case.injury, "severity": visit.severity or case.severity}
    known = {**basics, "haematoma": case.tissue.haematoma, **case.history, **visit.findings}
    return _worded(made, {name: value for name, value in known.items() if value is not None})


def consented(made: Maker, visit: Visit) -> list[Found]:
    """Whether the client agreed."""
    return [(made.say("i_consent"), made.say(f"i_consent_{visit.consent or 'unknown'}"))]


def screened(made: Maker, visit: Visit) -> list[Found]:
    """What a screen found, then which screen it was."""
    sets, screen = made.course.content.screening.sets, visit.screen
    if screen is None or screen.set not in sets:
        return [(made.say("i_screen"), made.say("i_screen_none"))]
    ending = "except" if screen.all_no_except else "all_no"
    said = made.say(f"i_screen_{ending}", screen=sets[screen.set].name)
    return [*_worded(made, screen.all_no_except), (made.say("i_screen"), said)]


def _worded(made: Maker, known: Mapping[str, Written]) -> list[Found]:
    facts = made.course.content.facts.facts
    return [(fact.label, fact.in_words(known[name])) for name, fact in facts.items() if name in known]
