"""The start page: what to do, in which order, and what the provider answers for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from builder.model.owed import policies_at
from builder.model.paper import PublishedTest
from builder.model.practice import PracticeCase
from builder.model.site import SitePage
from builder.render import address
from builder.render.maker import Maker, all_reviewed


@dataclass(frozen=True)
class Linked:
    """A page to go to, and a word about it."""

    address: str
    title: str
    note: str = ""


@dataclass(frozen=True)
class Group:
    """Pages that belong together."""

    title: str
    pages: list[Linked]


@dataclass(frozen=True)
class Part:
    """One thing to do, in its place."""

    title: str
    say: str
    groups: list[Group]
    empty: str = ""


def start_page(
    made: Maker,
    cases: dict[str, PracticeCase],
    tests: tuple[PublishedTest, ...],
    after: Sequence[SitePage] = (),
) -> SitePage:
    """The first page of the site; `after` are the pages for the time after the course."""
    course = made.course
    sources = course.content.references.sources
    return made.page(
        address.START,
        made.say("start"),
        "start",
        kind="start",
        where="",
        reviewed=all_reviewed(course),
        parts=[
            part for part in [*_parts(made, cases, tests), _after(made, after)] if _pages(part) or part.empty
        ],
        positions=[
            f"{point.replace('_', ' ').capitalize()}: {text}" for point, text in course.file.positions.items()
        ],
        policies=policies_at(course.file, "start"),
        references=[sources[one].cite for one in course.file.references if one in sources],
    )


def _parts(made: Maker, cases: dict[str, PracticeCase], tests: tuple[PublishedTest, ...]) -> list[Part]:
    say, file = made.say, made.course.file
    lessons = [Linked(address.of_lesson(stem_of(one.file)), one.title) for one in file.lessons]
    sets = [
        Group(one.title, [_case(cases[name]) for name in one.cases if name in cases]) for one in file.practice
    ]
    reference = [
        Linked(address.FLAGS, say("flags"), say("flags_note")),
        Linked(address.CARDS, say("cards"), say("cards_note")),
    ]
    papers = [Linked(address.of_test(one.test), one.title, say("test_note")) for one in tests]
    return [
        Part(say("do_lessons"), say("do_lessons_lede"), [Group("", lessons)], say("no_lessons")),
        Part(say("do_practice"), say("do_practice_lede"), sets, say("no_cases")),
        Part(say("do_reference"), say("do_reference_lede"), [Group("", reference)]),
        Part(say("do_test"), say("do_test_lede"), [Group("", papers)]),
    ]


def _pages(part: Part) -> bool:
    return any(group.pages for group in part.groups)


def _after(made: Maker, pages: Sequence[SitePage]) -> Part:
    """The way back: the days to return on, and what one writes for oneself."""
    links = [Linked(page.address, page.title) for page in pages if page.kind in ("after", "own")]
    return Part(made.say("after"), made.say("do_after_lede"), [Group("", links)])


def _case(case: PracticeCase) -> Linked:
    return Linked(address.of_case(case.id), case.title, case.subtitle)


def stem_of(file: str) -> str:
    """The stem by which a lesson's text is known: `lessons/phases.md` and `phases.md` are `phases`."""
    return file.rpartition("/")[2].removesuffix(".md")
