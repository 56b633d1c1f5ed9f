"""The instructor site in a browser: readable by everyone, at every width, light and dark, and on paper."""

import re
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Literal

import pytest
from playwright.sync_api import Browser, Page, ViewportSize

from builder.doors.site import build_site
from builder.model.site import SitePlan
from builder.render.address import published
from builder.render.instructor import instructor_site
from tests.axe import violations
from tests.render.sample_cases import published_test
from tests.render.sample_instructor import built_private, private_plan
from tests.render.sample_judged import judged, judged_course, ring

pytestmark = pytest.mark.browser
ADDRESSES = [published(page.address) for page in private_plan().pages]
PAPERS = ("A4", "Letter")
Scheme = Literal["light", "dark"]
MANY = 40


def opened(
    browser: Browser, folder: Path, address: str, *, width: int = 1280, scheme: Scheme = "light"
) -> Page:
    """A page opened from its folder."""
    size: ViewportSize = {"width": width, "height": 844}
    page = browser.new_context(viewport=size, color_scheme=scheme).new_page()
    page.goto((folder / address).as_uri())
    return page


def sheets(page: Page, paper: str) -> int:
    """How many sheets of paper a page takes."""
    printed = page.pdf(format=paper, prefer_css_page_size=False)
    return len(re.findall(rb"/Type\s*/Page\b", printed))


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [390, 1280])
def test_nothing_stands_in_anyones_way(browser: Browser, width: int, scheme: Scheme) -> None:
    """On no page does the checker find anything, folded parts included, and none is wider than the screen."""
    page = opened(browser, built_private(), "index.html", width=width, scheme=scheme)
    found: dict[str, list[str]] = {}
    for address in ADDRESSES:
        page.goto((built_private() / address).as_uri())
        page.evaluate("document.querySelectorAll('.page details').forEach(one => { one.open = true; })")
        wide = page.evaluate("document.documentElement.scrollWidth") > width
        found[address] = [*violations(page), *(["wider than the screen"] if wide else [])]
    assert {address: faults for address, faults in found.items() if faults} == {}
    page.context.close()


@pytest.mark.parametrize("address", ADDRESSES)
def test_paper_is_black_on_white(browser: Browser, address: str) -> None:
    """In print no navigation is left, ink is black, and what is folded on screen is there to read."""
    page = opened(browser, built_private(), address, scheme="dark")
    page.emulate_media(media="print", color_scheme="dark")
    assert not page.locator(".bar, .onward").locator("visible=true").count()
    ink = "one => { const told = getComputedStyle(one); return [told.color, told.backgroundColor]; }"
    assert page.locator("body").evaluate(ink) == ["rgb(0, 0, 0)", "rgb(255, 255, 255)"]
    folded = page.locator(".ruling").all()
    assert all(one.bounding_box() for one in folded)
    page.context.close()


@pytest.mark.parametrize("address", ["rules.html#rule-rf_calf_pain", "cards.html#card-friction"])
def test_a_link_unfolds_what_it_leads_to(browser: Browser, address: str) -> None:
    """A link into a folded part opens it."""
    page = opened(browser, built_private(), "index.html")
    page.goto(f"{built_private().as_uri()}/{address}")
    page.locator(f"#{address.partition('#')[2]}").wait_for(state="visible")
    page.context.close()


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize(
    ("address", "count"),
    [
        ("tests/final-a-table.html", 1),
        ("stations/friction-station-sheet.html", 1),
        ("stations/friction-station-handouts.html", 2),
    ],
)
def test_sheets_of_paper_are_counted(browser: Browser, address: str, count: int, paper: str) -> None:
    """A key on one sheet is one sheet, a check-off sheet too; each brief to hand out is one of its own."""
    page = opened(browser, built_private(), address)
    assert sheets(page, paper) == count
    page.context.close()


@pytest.mark.parametrize("paper", PAPERS)
def test_a_long_key_still_fits_one_sheet(browser: Browser, paper: str) -> None:
    """Forty questions, a third of them with two right options, on one side of paper."""
    with TemporaryDirectory() as scratch:
        build_site(long_plan(), Path(scratch))
        page = opened(browser, Path(scratch), "tests/final-a-table.html")
        assert sheets(page, paper) == 1
        page.context.close()


def long_plan() -> SitePlan:
    """The sample's plan with its first version's questions repeated until there are many."""
    paper, key = published_test().papers[0], ring().keys[0]
    questions, answers = [], []
    for number in range(MANY):
        name = f"q{number}x"
        questions.append(paper.questions[number % 3].model_copy(update={"id": name}))
        answers.append(key.answers[number % 3].model_copy(update={"question": name}))
    long = paper.model_copy(update={"questions": tuple(questions)})
    keys = (key.model_copy(update={"answers": tuple(answers)}),)
    test = published_test().model_copy(update={"papers": (long,)})
    return instructor_site(judged_course(), judged(), (test,), (ring().model_copy(update={"keys": keys}),))
