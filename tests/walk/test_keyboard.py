"""Everything can be reached and done by keyboard alone, and what has the focus is always seen."""

from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.codes import code_for
from tests.walk.kinds import KINDS
from tests.walk.sites import plain
from tests.walk.walker import Walker, walker

pytestmark = pytest.mark.browser
MOST = 45
SEEN = (Path(__file__).parent / "seen.js").read_text(encoding="utf-8")


def unseen(page: Page, most: int = MOST) -> list[str]:
    """What is wrong with the focus on the way through a page, forwards and back again."""
    found: list[str] = []
    for key in ("Tab", "Shift+Tab"):
        for _ in range(most):
            page.keyboard.press(key)
            found += page.evaluate(SEEN)
            if page.evaluate("document.activeElement === document.body"):
                break
    return list(dict.fromkeys(found))


def test_the_focus_is_always_seen(browser: Browser) -> None:
    """On every kind of page, forwards and backwards: it shows, and nothing lies over it."""
    found: dict[str, list[str]] = {}
    with walker(browser, plain()) as visitor:
        for kind in KINDS:
            visitor.walk_to(kind)
            found[kind.name] = unseen(visitor.page)
    assert {name: wrong for name, wrong in found.items() if wrong} == {}


def test_a_focus_that_is_hidden_is_found(browser: Browser) -> None:
    """A link without an outline does not show; what covers the whole page hides everything."""
    with walker(browser, plain()) as visitor:
        page = visitor.go("publish/red-flags.html")
        page.add_style_tag(
            content=".bar { position: fixed; inset: 0 } :focus-visible { outline: none !important }"
        )
        told = " ".join(unseen(page, 8))
    assert "does not show its focus" in told


def answer_here(page: Page) -> None:
    """Answer the question that the focus is in, as its control wants it."""
    kind = page.evaluate("document.activeElement.type || document.activeElement.localName")
    if kind in ("radio", "checkbox"):
        asked = "document.querySelectorAll(`[name='${document.activeElement.name}']:checked`).length"
        if not page.evaluate(asked):
            page.keyboard.press("Space")
    elif kind == "select-one":
        page.keyboard.press("ArrowDown")
    elif kind in ("text", "number", "textarea"):
        page.keyboard.type("2")


def to(visitor: Walker, selector: str) -> None:
    """Press Tab, answering on the way, until this has the focus."""
    for _ in range(400):
        visitor.page.keyboard.press("Tab")
        assert visitor.page.evaluate(SEEN) == []
        if visitor.page.evaluate("selector => document.activeElement.matches(selector)", selector):
            return
        if visitor.page.evaluate("Boolean(document.activeElement.closest('#paper, .step'))"):
            answer_here(visitor.page)
    raise AssertionError(f"{selector} cannot be reached")


def test_a_whole_test_without_a_pointer(browser: Browser) -> None:
    """From the code to the answer sheet; what is left open is told first, and handing in comes last."""
    with walker(browser, plain()) as visitor:
        page = visitor.go("publish/tests/final.html")
        to(visitor, "#code")
        page.keyboard.type("3F9")
        page.keyboard.press("Enter")
        assert page.evaluate("document.activeElement.getAttribute('aria-invalid')") == "true"
        page.keyboard.press("Control+A")
        page.keyboard.type(code_for("A"))
        page.keyboard.press("Enter")
        page.wait_for_selector("#paper:not([hidden])")
        page.evaluate("document.getElementById('to-review').focus()")
        page.keyboard.press("Enter")
        page.wait_for_selector("#review:not([hidden])")
        assert page.evaluate("Boolean(document.activeElement.closest('#review'))")
        assert "1, 2, 3" in page.locator("#review-state").inner_text()
        assert not page.locator("#handing").is_visible()
        page.evaluate("document.querySelector('.question h2').focus()")
        to(visitor, "#to-review")
        page.keyboard.press("Enter")
        assert page.locator(".answered .open").count() == 0
        to(visitor, "#finish")
        page.keyboard.press("Enter")
        page.wait_for_selector("#handing:not([hidden])")
        to(visitor, "#sheet-file")


def test_a_whole_case_without_a_pointer(browser: Browser) -> None:
    """Every decision of every visit, to the end, and the way back to the beginning."""
    with walker(browser, plain()) as visitor:
        page = visitor.go("publish/cases/stilt-ankle.html")
        for _ in range(40):
            to(visitor, ".decide, .on, .again button")
            ended = page.evaluate("document.activeElement.matches('.again button')")
            page.keyboard.press("Enter")
            if ended:
                break
        page.wait_for_function("document.querySelectorAll('form.step fieldset:disabled').length === 0")
        assert page.locator(".told:visible").count() == 0
