"""Every kind of page, on a phone and at a desk, light and dark: accessible, and never too wide."""

import pytest

from tests.browser.codes import code_for
from tests.browser.conftest import Visit

PAGES = (
    "index.html",
    "lessons/phases.html",
    "cases/landing.html",
    "cards/index.html",
    "cards/friction.html",
    "red-flags.html",
    "tests/final.html",
    f"tests/final-a.html#code={code_for('A')}",
)
WIDTHS = (390, 1280)
SCHEMES = ("light", "dark")

pytestmark = pytest.mark.browser


@pytest.mark.parametrize("address", PAGES)
@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("scheme", SCHEMES)
def test_axe_finds_nothing(visit: Visit, address: str, width: int, scheme: str) -> None:
    """No fault, with everything on the page unfolded."""
    visitor = visit(width=width, color_scheme=scheme)
    page = visitor.go(address)
    page.evaluate("document.querySelectorAll('.page details').forEach(one => { one.open = true; })")
    assert visitor.faults() == []


def test_axe_would_find_something(visit: Visit) -> None:
    """The checker speaks up on a page with a fault, so that its silence means something."""
    visitor = visit()
    visitor.go("index.html").evaluate("document.querySelector('#page').innerHTML += '<img src=x.png>'")
    assert any(fault.startswith("image-alt") for fault in visitor.faults())
    visitor.errors.clear()


@pytest.mark.parametrize("address", PAGES)
def test_a_page_reflows_at_320(visit: Visit, address: str) -> None:
    """Nothing needs sideways scrolling at 320 pixels (WCAG 2.2, 1.4.10), everything unfolded."""
    page = visit(width=320).go(address)
    page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })")
    assert page.evaluate("document.documentElement.scrollWidth") <= 320


@pytest.mark.parametrize("address", PAGES)
def test_focus_is_never_under_the_bar(visit: Visit, address: str) -> None:
    """What has the focus is not wholly hidden by the bar that stays (WCAG 2.2, 2.4.11)."""
    visitor = visit()
    page = visitor.go(address)
    for _ in range(25):
        page.keyboard.press("Tab")
        assert page.evaluate(
            """() => {
                const bar = document.querySelector('.bar'), at = document.activeElement;
                if (at === document.body || at.matches('.skip') || bar.contains(at)) return true;
                return at.getBoundingClientRect().bottom > bar.getBoundingClientRect().bottom;
            }"""
        )


@pytest.mark.parametrize("address", PAGES)
def test_a_page_is_the_same_from_a_server(visit: Visit, served: str, address: str) -> None:
    """Below a path of a server all works as from a folder: no error, nothing missing."""
    visitor = visit(served)
    page = visitor.go(address)
    assert page.locator("h1").count() == 1
    assert page.evaluate("getComputedStyle(document.body).backgroundColor") == "rgb(250, 246, 238)"


def test_dark_is_dark(visit: Visit) -> None:
    """The scheme follows the system."""
    page = visit(color_scheme="dark").go("index.html")
    assert page.evaluate("getComputedStyle(document.body).backgroundColor") == "rgb(28, 26, 23)"


def test_red_flags_are_one_tap_away(visit: Visit) -> None:
    """From the end of a long page the way to the red flags is still in sight."""
    page = visit().go("cases/landing.html")
    page.evaluate("window.scrollTo(0, document.body.scrollHeight)")
    assert page.locator(".flags").is_visible()
    page.locator(".flags").click()
    assert page.url.endswith("/red-flags.html")


def test_targets_are_large(visit: Visit) -> None:
    """An option is a target of at least 44 pixels each way, all of it."""
    page = visit(width=320).go("cases/landing.html")
    boxes = [one.bounding_box() for one in page.locator(".option:visible").all()]
    assert boxes
    assert all(box and box["height"] >= 44 and box["width"] >= 44 for box in boxes)


def test_paper_is_black_on_white(visit: Visit) -> None:
    """Printed from a dark screen, a test is black on white, whole, with its boxes and without the bar."""
    page = visit(color_scheme="dark").go("tests/final-a.html")
    page.emulate_media(media="print")
    assert page.evaluate("getComputedStyle(document.body).color") == "rgb(0, 0, 0)"
    assert page.evaluate("getComputedStyle(document.body).backgroundColor") == "rgb(255, 255, 255)"
    assert not page.locator(".bar").is_visible()
    assert page.locator(".boxes").is_visible()
    assert [one.is_visible() for one in page.locator(".question").all()] == [True, True, True]
