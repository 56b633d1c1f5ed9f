"""The student site as a whole: what is on it, what leads where, and what is never on it."""

import re
from itertools import pairwise

import pytest

from builder.model.site import SitePage
from builder.render.address import published, way
from tests.render.sample_site import parsed, plan, said

ADDRESSES = {page.address for page in plan().pages}


def test_the_site_has_a_page_for_everything() -> None:
    """Start, lesson, case, cards, red flags, and for the test an entry and each version."""
    assert {
        "index.md",
        "lessons/phases.md",
        "cases/landing.md",
        "cards/index.md",
        "cards/cold-pack.md",
        "cards/friction.md",
        "cards/refer.md",
        "red-flags.md",
        "tests/final.md",
        "tests/final-a.md",
        "tests/final-b.md",
        "404.md",
    } == ADDRESSES


def test_versions_are_not_listed() -> None:
    """A version is reached by its code, the page for lost ways by none; the navigation leads to the rest."""
    listed = {address for section in plan().sections for address in section.pages}
    assert ADDRESSES - listed == {"tests/final-a.md", "tests/final-b.md", "404.md"}


def test_tests_cannot_be_searched() -> None:
    """No page of a test goes into the search index, nor the one for lost ways; every other page does."""
    assert {page.address for page in plan().pages if not page.search} == {
        "404.md",
        "tests/final.md",
        "tests/final-a.md",
        "tests/final-b.md",
    }


@pytest.mark.parametrize("page", plan().pages, ids=lambda page: page.address)
def test_every_link_leads_to_a_page(page: SitePage) -> None:
    """A link on a page leads to another page of the site, or to a place on the same page."""
    tree = parsed(page.body)
    address = page.address
    ways = {way(address, goal) for goal in ADDRESSES}
    links = [str(link["href"]) for link in tree.select("a[href]")]
    anchors = {str(node["id"]) for node in tree.select("[id]")}
    assert [link for link in links if link not in ways and link.removeprefix("#") not in anchors] == []


@pytest.mark.parametrize("page", plan().pages, ids=lambda page: page.address)
def test_ids_are_unique(page: SitePage) -> None:
    """No two elements of a page share an id, drawings included."""
    ids = [str(node["id"]) for node in parsed(page.body).select("[id]")]
    assert sorted(ids) == sorted(set(ids))


@pytest.mark.parametrize("page", plan().pages, ids=lambda page: page.address)
def test_headings_step_down_one_by_one(page: SitePage) -> None:
    """A page begins with its one first heading and never skips a level."""
    if page.markdown:
        return
    levels = [int(node.name[1]) for node in parsed(page.body).select("h1,h2,h3,h4,h5")]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert [pair for pair in pairwise(levels) if pair[1] - pair[0] > 1] == []


def test_every_page_says_that_it_is_unreviewed() -> None:
    """As long as no clinician has looked, every page says so."""
    missing = [
        page.address
        for page in plan().pages
        if "not yet reviewed by a clinician" not in said(parsed(page.body))
    ]
    assert missing == []


def test_the_tested_case_is_named_nowhere() -> None:
    """The pool of a test leaves no trace on the site."""
    assert [page.address for page in plan().pages if "hidden_case" in page.model_dump_json()] == []
    texts = " ".join(page.body for page in plan().pages)
    assert re.search(r"\bhidden_case\b", texts) is None


def test_the_same_input_gives_the_same_plan() -> None:
    """Nothing in a plan depends on when or in what order it was made."""
    again = plan.__wrapped__()
    assert again.model_dump() == plan().model_dump()


def test_published_addresses_are_html() -> None:
    """Pages become HTML files where they lie."""
    assert {published(address) for address in ADDRESSES} >= {
        "index.html",
        "cards/index.html",
        "tests/final-a.html",
    }
