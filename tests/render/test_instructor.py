"""The instructor site as a whole: what is on it, what leads where, and how every page is marked."""

from itertools import pairwise
from typing import Any

import pytest

from builder.fault import Fault
from builder.model.site import SitePage
from builder.render.address import published, way
from builder.render.instructor import instructor_site
from tests.render.sample_cases import published_test
from tests.render.sample_instructor import private_plan
from tests.render.sample_judged import judged, judged_course, ring
from tests.render.sample_site import one, parsed, said

PAGES = {page.address: page for page in private_plan().pages}
each_page = pytest.mark.parametrize("page", PAGES.values(), ids=PAGES.keys())


def test_the_site_has_a_page_for_everything() -> None:
    """Start, versions twice, cases, a station in three pages, what the course answers for, and reference."""
    assert PAGES.keys() == {
        "index.md",
        "tests/final-a.md",
        "tests/final-a-table.md",
        "tests/final-b.md",
        "tests/final-b-table.md",
        *(f"paper/final-{letter}{rest}.md" for letter in "ab" for rest in ("", "-large", "-answers")),
        "paper/final.md",
        "cases/landing.md",
        "room/landing.md",
        "cases/hidden-case.md",
        "stations/friction-station.md",
        "stations/friction-station-handouts.md",
        "stations/friction-station-sheet.md",
        "coverage.md",
        "matrix.md",
        "policies.md",
        "rules.md",
        "cards.md",
        "sources.md",
        "red-flags.md",
    }


def test_every_page_is_listed() -> None:
    """Nothing here is reached by a code: the navigation leads to all of it, and a case to its room view."""
    listed = {address for section in private_plan().sections for address in section.pages}
    assert listed | {"room/landing.md"} == PAGES.keys()
    assert parsed(PAGES["cases/landing.md"].body).select('a[href="../room/landing.html"]')
    assert not parsed(PAGES["cases/hidden-case.md"].body).select('a[href^="../room/"]')


@each_page
def test_every_page_is_marked(page: SitePage) -> None:
    """Each page but those for a room says first whose it is, and each says last that nobody reviewed it."""
    tree = parsed(page.body)
    assert said(one(tree, ".unreviewed")) == "These rules are not yet reviewed by a clinician."
    if page.kind == "room":
        return
    first = tree.find(True)
    assert first == one(tree, ".private-mark")
    assert said(one(tree, ".private-mark")).startswith("Instructor's side. This holds the keys.")


def test_the_caution_ends_every_page() -> None:
    """The footer carries the course's caution, the bar the mark of this side and the way to the red flags."""
    plan = private_plan()
    assert plan.footer.startswith("Education, not medical advice.")
    assert plan.name == "Instructor: Lanternfall Clinic course"
    assert plan.flags == "red-flags.md"


@each_page
def test_every_link_leads_somewhere(page: SitePage) -> None:
    """A link leads to a page of this site, and where it names a place, that place is there."""
    ways = {way(page.address, goal): goal for goal in PAGES} | {"": page.address}
    for link in parsed(page.body).select("a[href]"):
        href, _, anchor = str(link["href"]).partition("#")
        assert href in ways, href
        assert not anchor or parsed(PAGES[ways[href]].body).select(f'[id="{anchor}"]'), (href, anchor)


@each_page
def test_ids_are_unique(page: SitePage) -> None:
    """No two elements of a page share an id, drawings included."""
    ids = [str(node["id"]) for node in parsed(page.body).select("[id]")]
    assert sorted(ids) == sorted(set(ids))


@each_page
def test_every_page_has_one_first_heading(page: SitePage) -> None:
    """Headings begin with one of the first level and skip none."""
    levels = [int(node.name[1]) for node in parsed(page.body).select("h1, h2, h3, h4")]
    assert levels.count(1) == 1
    assert levels[0] == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))


@pytest.mark.parametrize("changed", [{"edition": "otherone"}, {"test": "another"}])
def test_a_key_of_another_edition_is_refused(changed: dict[str, Any]) -> None:
    """A key that belongs to other papers is never printed beside these."""
    other = ring().model_copy(update=changed)
    with pytest.raises(Fault, match="There is no key for final"):
        instructor_site(judged_course(), judged(), (published_test(),), (other,))


def test_a_course_without_tests_and_stations_has_a_site() -> None:
    """What is not there is left out of pages and navigation."""
    made = judged_course(tests=[], practice=[])
    plan = instructor_site(made, {}, (), ())
    assert {section.title for section in plan.sections}.isdisjoint({"Keys", "Cases"})
    assert published("index.md") == "index.html"
