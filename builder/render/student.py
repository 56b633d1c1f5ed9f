"""The student site: what to do in which order, lessons, practice, cards, red flags, tests without keys."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType

from builder.model.after import SpacedSet
from builder.model.library import Course
from builder.model.paper import PublishedTest
from builder.model.practice import PlacedQuestion, PracticeCase
from builder.model.site import SitePage, SitePlan, SiteSection
from builder.render import address
from builder.render.maker import Maker, maker, site_plan
from builder.render.student_after import after_pages
from builder.render.student_card import card_pages
from builder.render.student_case import case_page
from builder.render.student_flags import flags_page
from builder.render.student_lesson import lesson_media, lesson_page
from builder.render.student_lost import lost_page
from builder.render.student_paper import paper_pages
from builder.render.student_start import start_page


def student_site(
    course: Course,
    practice: tuple[PracticeCase, ...],
    tests: tuple[PublishedTest, ...],
    known: Mapping[str, SitePage] = MappingProxyType({}),
    placed: Mapping[str, PlacedQuestion] = MappingProxyType({}),
    spaced: Sequence[SpacedSet] = (),
) -> SitePlan:
    """The plan of the student site; it is made without ever seeing a key.

    A case whose page is `known` is not laid out again; its visits may be left out. `placed` are the questions
    that pages place, `spaced` is what to come back to after the course.
    """
    made = maker(course, placed)
    shown = {case.id: case for case in practice}
    lessons = [lesson_page(made, lesson, shown) for lesson in course.file.lessons]
    cases = [known.get(case.id) or case_page(made, case) for case in practice]
    cards = card_pages(made)
    papers = [page for test in tests for page in paper_pages(made, test)]
    after = after_pages(made, spaced, shown)
    ends = [flags_page(made), *papers, *after, lost_page(made, tests)]
    pages = [start_page(made, shown, tests, after), *lessons, *cases, *cards, *ends]
    sections = _sections(made, lessons, cases, cards, tests)
    sections.append(SiteSection(title=made.say("after"), pages=_addresses(after)))
    plan = site_plan(made, pages, sections, address.FLAGS)
    return plan.model_copy(update={"media": lesson_media(course)})


def case_pages(course: Course, practice: Iterable[PracticeCase]) -> list[SitePage]:
    """The pages of some practice cases alone, as they stand in the site."""
    made = maker(course)
    return [case_page(made, case) for case in practice]


def _sections(
    made: Maker,
    lessons: list[SitePage],
    cases: list[SitePage],
    cards: list[SitePage],
    tests: tuple[PublishedTest, ...],
) -> list[SiteSection]:
    say = made.say
    return [
        SiteSection(title=say("start"), pages=(address.START,)),
        SiteSection(title=say("lessons"), pages=_addresses(lessons)),
        SiteSection(title=say("practice"), pages=_addresses(cases)),
        SiteSection(title=say("cards"), pages=_addresses(cards)),
        SiteSection(title=say("flags"), pages=(address.FLAGS,)),
        SiteSection(title=say("tests"), pages=tuple(address.of_test(test.test) for test in tests)),
    ]


def _addresses(pages: list[SitePage]) -> tuple[str, ...]:
    return tuple(page.address for page in pages)
