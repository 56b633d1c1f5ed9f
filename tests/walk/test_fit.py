"""Text fits on every kind of page: on the smallest phone, with letters twice as large, and set far apart."""

import pytest
from playwright.sync_api import Browser

from tests.walk.fit import misfits
from tests.walk.kinds import KINDS
from tests.walk.sites import plain
from tests.walk.walker import walker

pytestmark = pytest.mark.browser
# WCAG 2.2, 1.4.4: text twice as large; 1.4.12: the spacing that a reader may set.
TWICE = "html { font-size: 212.5% !important; }"
APART = (
    "*:not(svg *) { line-height: 1.5 !important; letter-spacing: .12em !important; }"
    "*:not(svg *) { word-spacing: .16em !important; }"
    "p { margin-bottom: 2em !important; }"
)


@pytest.mark.parametrize(("width", "style"), [(320, ""), (390, TWICE), (390, APART), (768, "")])
def test_text_fits(browser: Browser, width: int, style: str) -> None:
    """Nothing is wider than the screen (WCAG 2.2, 1.4.10), cut off, or out of its box."""
    found: dict[str, list[str]] = {}
    with walker(browser, plain(), width=width) as visitor:
        for kind in KINDS:
            visitor.walk_to(kind)
            visitor.page.add_style_tag(content=f"/* set by a reader */ {style}")
            found[kind.name] = misfits(visitor.page)
    assert {name: wrong for name, wrong in found.items() if wrong} == {}


def test_text_that_does_not_fit_is_found(browser: Browser) -> None:
    """Too long a word on one line, and a text in a box that hides it."""
    with walker(browser, plain(), width=320) as visitor:
        page = visitor.go("publish/index.html")
        page.evaluate("document.querySelector('h1').style.whiteSpace = 'nowrap'")
        page.evaluate(
            "document.querySelector('.lede').style.cssText = 'white-space: nowrap; overflow: hidden'"
        )
        told = " ".join(misfits(page))
    assert "page of" in told
    assert "out of h1" in told or "out of article" in told
    assert "cut off in p.lede" in told
