"""The text of every new file but a case, from the answers given and what the course has."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date

from builder.model.card import Card
from builder.model.library import Course
from builder.new.fill import LOOK, as_flow, filled
from builder.new.grid import grid_text

Answers = Mapping[str, str]


def course_text(answers: Answers, practice_case: str, *test_cases: str) -> str:
    """`course.yml` of a new course with one case to practise on and some in the test."""
    audience = f"{answers['licence']} holders who treat soft-tissue injuries"
    cases = {"practice_case": practice_case, "test_cases": ", ".join(test_cases)}
    return filled("course.yml", {**answers, **cases, "audience": audience})


def new_files(kind: str, answers: Answers, course: Course, today: date) -> dict[str, str]:
    """The files of one new thing, by their names below its folder."""
    name = answers["id"]
    if kind == "class":
        tables = {f"{name}/{one}": (LOOK / one).read_text(encoding="utf-8") for one in TABLES}
        return {f"{name}/class.yml": filled("class.yml", answers), **tables}
    if kind == "lesson":
        return {f"{name}.md": filled("lesson.md", {})}
    return {f"{name}.yml": filled(f"{kind}.yml", {**answers, **_MORE[kind](answers, course, today)})}


TABLES = ("roster.csv", "attendance.csv")


def _station(answers: Answers, course: Course, _: date) -> dict[str, str]:
    case = course.cases[answers["case"]]
    return {"visit": case.visits[-1].id, "objective": _performed(course)}


def _performed(course: Course) -> str:
    """The objective that a station most likely proves: one about performing or choosing, or else the last."""
    ids = [one.id for one in course.file.objectives]
    return next((one for one in ("perform", "choose") if one in ids), ids[-1])


def _question(answers: Answers, *_: object) -> dict[str, str]:
    return {"answer": (LOOK / f"question_{answers['kind']}.yml").read_text(encoding="utf-8").rstrip("\n")}


def _board(_: Answers, __: Course, today: date) -> dict[str, str]:
    return {"dated": today.isoformat()}


def _nothing(*_: object) -> dict[str, str]:
    return {}


def _card(answers: Answers, course: Course, _: date) -> dict[str, str]:
    family = [card for card in course.content.cards.values() if answers["group"] in card.groups]
    return {
        "hands_on": "yes" if any(card.hands_on for card in family) else "no",
        "serves": ", ".join(_shared(family)),
        "usual": as_flow(family[0].usual)[1:-1],
        "baseline": grid_text(family),
    }


def _shared(family: list[Card]) -> tuple[str, ...]:
    """The aims that every card of a family serves; of the first, where they share none."""
    shared = tuple(aim for aim in family[0].serves if all(aim in card.serves for card in family))
    return shared or family[0].serves


_MORE: dict[str, Callable[[Answers, Course, date], dict[str, str]]] = {
    "station": _station,
    "question": _question,
    "rule": _nothing,
    "card": _card,
    "board": _board,
}
