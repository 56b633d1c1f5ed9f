"""The sheet for review: room to sign, and whole entries on paper."""

import re
from functools import cache
from pathlib import Path
from tempfile import mkdtemp

import pytest
from playwright.sync_api import Browser, Page, ViewportSize

from builder.render.review_list import listed
from builder.render.review_sheet import as_sheet, css_text
from tests.render.sample_site import one, parsed, said
from tests.render.test_review_list import demonstration

MM = 96 / 25.4
MARGINS = 33
PAPERS = {"A4": (210, 297), "Letter": (216, 279)}


@cache
def sheet() -> str:
    """The sheet of the demonstration."""
    made = demonstration()
    return as_sheet(made, listed(made))


def test_there_is_room_to_sign_for_everyone_and_beside_each() -> None:
    """A table for name, licence, initials and signature; a line beside each entry; how it is copied."""
    tree = parsed(sheet())
    count = len(listed(demonstration()))
    assert len(tree.select("article")) == len(tree.select(".sign")) == count
    heads = [said(head) for head in tree.select(".reviewers th")]
    assert heads == ["Name", "Licence and number", "Initials", "Signature", "Date"]
    assert said(one(tree, "pre")).startswith("rules: ")
    assert "not medical advice" in said(one(tree, ".caution"))


def test_a_text_in_the_style_sheet_ends_nothing() -> None:
    """A title with quotes, a brace or a closing tag stays a text."""
    assert css_text("Knee: A to Z") == '"Knee: A to Z"'
    assert css_text('"</style>') == '"\\22 \\3c \\2f style\\3e "'


def printed(browser: Browser, paper: str) -> Page:
    """The sheet in a browser as it lies on paper: as wide as the paper between its margins."""
    path = Path(mkdtemp(prefix="caseloom-")) / "sheet.html"
    path.write_text(sheet(), encoding="utf-8", newline="\n")
    size: ViewportSize = {"width": round((PAPERS[paper][0] - 32) * MM), "height": 900}
    page = browser.new_context(viewport=size).new_page()
    page.emulate_media(media="print")
    page.goto(path.as_uri())
    return page


@pytest.mark.browser
@pytest.mark.parametrize("paper", PAPERS)
def test_no_entry_is_cut_across_pages(browser: Browser, paper: str) -> None:
    """What fits on a page is kept whole on one; what is longer is cut between rows, under its heads again."""
    page = printed(browser, paper)
    room = (PAPERS[paper][1] - MARGINS) * MM
    entries = page.evaluate(
        """() => [...document.querySelectorAll("article")].map((one) => ({
          high: one.getBoundingClientRect().height,
          kept: getComputedStyle(one).breakInside,
          grids: one.querySelectorAll("table").length,
          rows: [...one.querySelectorAll("tr, dl div, .sign")].map((row) => [
            row.getBoundingClientRect().height, getComputedStyle(row).breakInside]),
          heads: [...one.querySelectorAll("thead")].every((head) =>
            getComputedStyle(head).display === "table-header-group")}))"""
    )
    assert all(one["kept"] == "avoid" and one["heads"] for one in entries)
    assert all(kept == "avoid" and high < room / 2 for one in entries for high, kept in one["rows"])
    longer = [one for one in entries if one["high"] > room]
    assert len(longer) < len(entries) / 20
    assert all(one["grids"] for one in longer)


@pytest.mark.browser
def test_it_prints_with_a_head_and_a_number_on_each_page(browser: Browser) -> None:
    """Many pages, fewer than entries; the margins say what it is, which page, and the caution."""
    page = printed(browser, "A4")
    pages = len(re.findall(rb"/Type\s*/Page\b", page.pdf(format="A4")))
    assert 1 < pages < len(listed(demonstration()))
    rules = page.evaluate("[...document.styleSheets[0].cssRules].map((one) => one.cssText).join('\\n')")
    assert "@top-left" in rules
    assert "counter(page)" in rules
    assert "counter(pages)" in rules
    assert "stop and refer" in rules
    size = page.evaluate("parseFloat(getComputedStyle(document.body).fontSize)")
    assert size * 72 / 96 == pytest.approx(10, abs=0.01)
