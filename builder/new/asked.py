"""The few facts that shape a new file, asked for in words; what is suggested fits the course."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta

from builder.model.asking import Asking
from builder.model.library import Course
from builder.new.case import usual_since
from builder.new.kinds import QUESTIONS

SOON = 28  # days until a class that is planned today
TITLE = Asking("title", "Its title")


def about_course(folder: str) -> tuple[Asking, ...]:
    """What is asked before a course is begun; the name of its folder is suggested as its title."""
    named = " ".join(re.split(r"[\s_-]+", folder.strip(" _-.")))
    return (
        replace(TITLE, suggested=named[:1].upper() + named[1:] or None),
        Asking("provider", "Who offers it (the name of your business)", "Write here who offers it"),
        Asking("instructor", "Who teaches it", "Write here who teaches it"),
        Asking("licence", "The licence its participants hold", "Licensed massage therapist"),
    )


def about(kind: str, course: Course, today: date) -> tuple[Asking, ...]:
    """What is asked before a file of this sort is begun."""
    return (Asking("title", TITLES.get(kind, TITLE.words)), *_further(kind, course, today))


TITLES = {"question": "What is asked", "card": "The technique", "board": "The approving body"}


def _further(kind: str, course: Course, today: date) -> Iterator[Asking]:
    match kind:
        case "case":
            yield from _case(course)
        case "station":
            yield _one_of("case", "The case on the board", _open_cases(course))
        case "question":
            yield _one_of("objective", "Its objective", [one.id for one in course.file.objectives])
            yield Asking("kind", "The sort of answer", "one", QUESTIONS)
            yield Asking("use", "For practice or for a test", "practice", ("practice", "test"))
        case "rule":
            yield _one_of("fact", "The fact it is about", _grave(course), "pregnant")
            yield _one_of("group", "The family of techniques it closes", _families(course), "hands_on")
            yield Asking("answer", "Not yet, or not for this client", "barred", ("barred", "not_yet"))
        case "card":
            yield _one_of("group", "The family it belongs to", _families(course, given=False))
        case "board":
            yield Asking("source", "Where its rules stand", "Write here the document and its section")
            yield Asking("minutes", "Minutes in one of its hours", "60", ("50", "60"))
            yield Asking("floor", "The least attendance it takes", "90 %")
        case "class":
            days = range(max((item.day for item in course.file.agenda), default=1))
            yield Asking("dates", "Its days", ", ".join(f"{today + timedelta(SOON + day)}" for day in days))
            yield Asking("zone", "Its time zone", "America/New_York")
            yield Asking("place", "Where it is held", "Write here where it is held")


def _case(course: Course) -> Iterator[Asking]:
    facts = course.content.facts.facts
    yield _one_of("region", "Where it hurts", list(facts["region"].values), "thigh")
    yield _one_of("tissue", "Which tissue", list(facts["tissue"].values))
    yield _one_of("injury", "What happened to it", list(facts["injury"].values))
    yield Asking("since", "How long ago, as 20 h, 6 days or 3 weeks", "as usual for the injury")
    yield Asking(
        "use", "For practice, for the test, or neither yet", "practice", ("practice", "test", "neither")
    )


def since(answers: dict[str, str]) -> str:
    """How long ago the injury was, with what is usual for it where nothing else was said."""
    given = answers["since"]
    return usual_since(answers["injury"]) if given == "as usual for the injury" else given


def _one_of(name: str, words: str, choices: list[str], first: str = "") -> Asking:
    suggested = first if first in choices else next(iter(choices), None)
    return Asking(name, words, suggested, tuple(choices))


def _grave(course: Course) -> list[str]:
    facts = course.content.facts.facts.items()
    return [name for name, fact in facts if fact.kind == "yes_no" and fact.worse_when == "yes"]


def _open_cases(course: Course) -> list[str]:
    """The cases that no test keeps to itself."""
    kept = {name for test in course.file.tests for name in test.cases}
    return [name for name in course.cases if name not in kept]


def _families(course: Course, *, given: bool = True) -> list[str]:
    own = dict.fromkeys(group for card in course.content.cards.values() for group in card.groups)
    return [*(("hands_on", "techniques") if given else ()), *own]
