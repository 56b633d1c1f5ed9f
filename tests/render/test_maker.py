"""The maker binds templates, words and links, and every site wears the same frame."""

from dataclasses import replace

import pytest

from builder.model.reviewable import reviewable
from builder.model.site import SiteSection
from builder.render.maker import all_reviewed, maker, site_plan
from tests.model.signed import signed_but
from tests.render.samples import course


def test_a_page_says_that_nobody_reviewed_it() -> None:
    """The line stands until a clinician has looked."""
    made = maker(course())
    plain = made.page("cards/x.md", "X", "cards", groups=())
    looked = made.page("cards/x.md", "X", "cards", groups=(), reviewed=True)
    assert course().site.unreviewed in plain.body
    assert course().site.unreviewed not in looked.body


def test_a_page_knows_its_place() -> None:
    """Without other words the bar says the page's title; links are made from where the page lies."""
    made = maker(course())
    page = made.page("cards/x.md", "Cards", "cards", groups=(), kind="cards", search=False)
    assert (page.where, page.kind, page.search) == ("Cards", "cards", False)
    assert made.links("cards/x.md")("index.md") == "../index.html"


@pytest.mark.parametrize("part", ["rules", "cards", "phases", "background"])
def test_a_course_is_reviewed_when_all_of_it_is(part: str) -> None:
    """One card, rule, list or the phases that nobody looked at is enough to say so."""
    sample = course()
    name = next(iter(reviewable(sample.content)[part]))
    assert not all_reviewed(replace(sample, content=signed_but(sample.content, f"{part}/{name}")))
    assert all_reviewed(replace(sample, content=signed_but(sample.content)))


def test_a_plan_carries_caution_and_contact() -> None:
    """Every page ends with the caution and with where to ask; empty sections fall away."""
    made = maker(course())
    sections = (SiteSection(title="Full", pages=("index.md",)), SiteSection(title="Empty", pages=()))
    plan = site_plan(made, (), sections, "red-flags.md")
    assert plan.footer.splitlines() == [course().site.caution, "Questions: desk@lanternfall.example"]
    assert [section.title for section in plan.sections] == ["Full"]
    assert plan.flags == "red-flags.md"
