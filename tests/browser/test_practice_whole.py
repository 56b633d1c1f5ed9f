"""A whole case of the demonstration by keyboard alone: every topic, from the first question to the last."""

import pytest
from playwright.sync_api import Page

from tests.browser.conftest import Visit
from tests.browser.visitor import Visitor
from tests.walk.sites import plain

pytestmark = pytest.mark.browser
CASE = "cases/unicycle-thigh.html"
OPEN = ".step:not([hidden]):not(.given):not(.decided)"
TOPICS = [
    "The session",
    "The phase",
    "What to do",
    "How much",
    "The order",
    "What to ask first",
    "What would end it",
]


STROKES = ("Cross-fibre friction", "Broadening, muscle at work", "Lengthening stroke, muscle at work")


def answer(visitor: Visitor, page: Page) -> None:
    """Give the first answer to the open question, or move a step of an order down, and decide."""
    if page.locator(f"{OPEN} .steps").count():
        visitor.tab_to(f"{OPEN} .down", 120)
        page.keyboard.press("Enter")
    else:
        visitor.tab_to(f"{OPEN} input", 120)
        page.keyboard.press("Space")
    visitor.tab_to(f"{OPEN} .decide", 120)
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.className") == "told"


def test_a_whole_case_by_keyboard_alone(visit: Visit) -> None:
    """Four visits, each decided and gone on from; the last one asks for everything there is to ask."""
    visitor = visit(plain() / "publish")
    page = visitor.go(CASE)
    for number in range(4):
        while page.locator(f"{OPEN}:visible").count():
            answer(visitor, page)
        if number < 3:
            visitor.tab_to(".on:not([hidden])", 120)
            page.keyboard.press("Enter")
    last = page.locator(".visit").nth(3)
    assert [one.get_attribute("aria-label") for one in last.locator(".told").all()] == TOPICS
    assert page.locator(".next:visible").count() == 4
    assert page.locator(".where").inner_text() == "visit 4 of 4"
    page.evaluate("window.scrollTo(0, 0)")
    assert visitor.faults() == []
    page.reload()
    assert page.locator(f"{OPEN}:visible").count() == 0
    ordered = page.locator(".step").filter(has=page.locator(".steps"))
    assert ordered.locator(".line b").text_content() == " → ".join(STROKES)
    first, second, third = STROKES
    assert ordered.locator(".chose").text_content() == f"You chose: 1. {first} 2. {third} 3. {second}"


def test_an_order_is_told_in_its_order(visit: Visit) -> None:
    """Worked, the steps stand with their places, the first one first, each with its reason."""
    page = visit(plain() / "publish").go(f"{CASE}#worked")
    told = page.get_by_role("group", name="The order")
    assert [one.inner_text() for one in told.locator(".word").all()] == ["Place 1", "Place 2", "Place 3"]
    assert told.locator(".which b").first.inner_text() == "Cross-fibre friction"
