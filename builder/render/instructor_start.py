"""The first page of the instructor's side: what is here, its editions, what is still to be looked at."""

from __future__ import annotations

from collections.abc import Iterable

from builder.model.card import Contested
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.paper import PublishedTest
from builder.model.reviewable import reviewable, unsigned
from builder.model.site import SitePage
from builder.render import address
from builder.render.instructor_address import (
    CARDS,
    COVERAGE,
    MATRIX,
    POLICIES,
    RULES,
    SOURCES,
    of_answers,
    of_booklet,
    of_handouts,
    of_sheet,
    of_station,
    of_table,
    of_typing,
)
from builder.render.instructor_case import used_in
from builder.render.instructor_found import client_line
from builder.render.maker import Maker, all_reviewed


def start_page(made: Maker, tests: Iterable[tuple[PublishedTest, KeyRing]]) -> SitePage:
    """The way to everything, with editions and counts."""
    course = made.course
    return made.page(
        address.START,
        made.say("start"),
        "instructor_start",
        kind="start",
        where="",
        reviewed=all_reviewed(course),
        tests=[_test(made, test, ring) for test, ring in tests],
        cases=[_case(made, name) for name in course.cases],
        stations=[
            (one.title, of_station(one.id), of_handouts(one.id), of_sheet(one.id))
            for one in course.stations.values()
        ],
        answering=[
            (made.say(name), made.say(f"{name}_note"), goal)
            for name, goal in (("i_coverage", COVERAGE), ("i_grid", MATRIX), ("i_policies", POLICIES))
        ],
        reference=_reference(made),
        unsigned=_unsigned(made),
        contested=len(_points(course)),
        undecided=[
            point.replace("_", " ") for point in _points(course) if point not in course.file.positions
        ],
    )


def _test(made: Maker, test: PublishedTest, ring: KeyRing) -> dict[str, object]:
    versions = [
        (
            paper.version,
            [
                (made.say(name), goal)
                for name, goal in (
                    ("i_whole_key", address.of_version(test.test, paper.version)),
                    ("i_on_one_sheet", of_table(test.test, paper.version)),
                    ("i_booklet", of_booklet(test.test, paper.version, large=False)),
                    ("i_large", of_booklet(test.test, paper.version, large=True)),
                    ("i_answers", of_answers(test.test, paper.version)),
                )
            ],
        )
        for paper in test.papers
    ]
    return {"test": test, "ring": ring, "versions": versions, "typing": of_typing(test.test)}


def _case(made: Maker, name: str) -> dict[str, str]:
    case = made.course.cases[name]
    used = used_in(made, address.START, name)
    return {
        "address": address.of_case(name),
        "title": case.title,
        "who": client_line(made, case),
        "used": "; ".join(one.text for one in used) or made.say("i_in_nothing"),
    }


def _reference(made: Maker) -> list[tuple[str, str, str]]:
    say = made.say
    return [
        (say("i_rules"), say("i_rules_note"), RULES),
        (say("cards"), say("i_cards_note"), CARDS),
        (say("i_sources"), say("i_sources_note"), SOURCES),
        (say("flags"), say("flags_note"), address.FLAGS),
    ]


def _unsigned(made: Maker) -> list[str]:
    """How much of each part of the content no clinician has reviewed, in words."""
    parts = reviewable(made.course.content)
    counted = unsigned(made.course.content).items()
    return [made.say(f"i_{part}_open", n=count, of=len(parts[part])) for part, count in counted]


def _points(course: Course) -> list[str]:
    """The contested points that the course's rules and cards rest on, each once."""
    content = course.content
    rows = [row.contested for card in content.cards.values() for row in card.baseline]
    every: list[Contested | None] = [*(rule.contested for rule in content.rules.values()), *rows]
    return sorted({one.point for one in every if one})
