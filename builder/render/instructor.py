"""The instructor site: keys with the rules behind them, stations, coverage, rules, cards, sources."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from types import MappingProxyType

from builder.fault import Fault
from builder.model.judgement import VisitJudgement
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.paper import PublishedTest
from builder.model.practice import PracticeCase
from builder.model.site import SitePage, SitePlan, SiteSection
from builder.render import address
from builder.render.instructor_address import CARDS, COVERAGE, MATRIX, POLICIES, RULES, SOURCES, of_room
from builder.render.instructor_cards import cards_page
from builder.render.instructor_case import case_page
from builder.render.instructor_coverage import coverage_page
from builder.render.instructor_key import key_pages
from builder.render.instructor_mark import marked
from builder.render.instructor_matrix import matrix_page
from builder.render.instructor_paper import paper_pages
from builder.render.instructor_policies import policies_page
from builder.render.instructor_room import room_page
from builder.render.instructor_rules import rules_page
from builder.render.instructor_sources import sources_page
from builder.render.instructor_start import start_page
from builder.render.instructor_station import station_pages
from builder.render.maker import Maker, maker, site_plan
from builder.render.student_flags import flags_page


def instructor_site(
    course: Course,
    judged: Mapping[str, tuple[VisitJudgement, ...]],
    published: tuple[PublishedTest, ...],
    rings: tuple[KeyRing, ...],
    known: Mapping[str, SitePage] = MappingProxyType({}),
    rooms: Mapping[str, PracticeCase] = MappingProxyType({}),
) -> SitePlan:
    """The plan of the instructor site; it holds every key and is never published.

    A page `known` by its address is not laid out again; `rooms` are the other cases to show to a room.
    """
    made = maker(course)
    tests = [(test, _ring_of(test, rings)) for test in published]
    keys = [page for test, ring in tests for page in key_pages(made, test, ring)]
    cases = [
        known.get(address.of_case(name)) or case_page(made, course.cases[name], judged[name])
        for name in judged
    ]
    papers = [page for test in published for page in paper_pages(made, test)]
    stations = [page for station in course.stations.values() for page in station_pages(made, station)]
    reference = [rules_page(made), cards_page(made), sources_page(made)]
    pages = [start_page(made, tests), *keys, *papers, *cases, *stations, *_rooms(made, known, rooms)]
    pages += [coverage_page(made, rings), matrix_page(made, rings), policies_page(made)]
    pages += [*reference, flags_page(made)]
    return marked(made, site_plan(made, pages, _sections(made, keys, papers, cases, stations), address.FLAGS))


def case_pages(course: Course, judged: Mapping[str, tuple[VisitJudgement, ...]]) -> list[SitePage]:
    """The keys of some cases alone, before the site is marked."""
    made = maker(course)
    return [case_page(made, course.cases[name], visits) for name, visits in judged.items()]


def room_pages(course: Course, rooms: Iterable[PracticeCase]) -> list[SitePage]:
    """The pages for the room of some cases alone."""
    made = maker(course)
    return [room_page(made, case) for case in rooms]


def _rooms(
    made: Maker, known: Mapping[str, SitePage], rooms: Mapping[str, PracticeCase]
) -> Iterator[SitePage]:
    """The page for the room of every case that may be shown to one."""
    for name in made.course.cases:
        page = known.get(of_room(name))
        if page is not None:
            yield page
        elif name in rooms:
            yield room_page(made, rooms[name])


def _ring_of(test: PublishedTest, rings: Iterable[KeyRing]) -> KeyRing:
    """The keys of exactly this edition of a test."""
    ring = next((one for one in rings if (one.test, one.edition) == (test.test, test.edition)), None)
    if ring is None:
        raise Fault(f"There is no key for {test.test}, edition {test.edition}.", "Build the course again.")
    return ring


def _sections(
    made: Maker, keys: list[SitePage], papers: list[SitePage], cases: list[SitePage], stations: list[SitePage]
) -> list[SiteSection]:
    say = made.say
    return [
        SiteSection(title=say("start"), pages=(address.START,)),
        SiteSection(title=say("i_keys"), pages=_addresses(keys)),
        SiteSection(title=say("i_papers"), pages=_addresses(papers)),
        SiteSection(title=say("i_cases"), pages=_addresses(cases)),
        SiteSection(title=say("i_stations"), pages=_addresses(stations)),
        SiteSection(title=say("i_coverage"), pages=(COVERAGE, MATRIX, POLICIES)),
        SiteSection(title=say("i_reference"), pages=(RULES, CARDS, SOURCES)),
        SiteSection(title=say("flags"), pages=(address.FLAGS,)),
    ]


def _addresses(pages: Iterable[SitePage]) -> tuple[str, ...]:
    return tuple(page.address for page in pages)
