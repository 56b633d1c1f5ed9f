"""Every kind of question in a browser: by keyboard alone, kept and shown again, and on paper."""

from __future__ import annotations

from typing import Any

import pytest
from playwright.sync_api import Page

from tests.browser.codes import code_for
from tests.browser.conftest import Visit
from tests.browser.visitor import Visitor
from tests.render.kind_examples import EXAMPLES, built

pytestmark = pytest.mark.browser
PAPER = f"tests/final-a.html#code={code_for('A', versions=1)}&class=spring"
BY_NAME = [pytest.param(one, id=one["name"]) for one in EXAMPLES]
OF = '(([q, value]) => { const box = document.querySelector(`fieldset[data-question="${q}"]`);'
READ = OF + "return caseloom.kindOf(box).read(box); })"
SAID = OF + "return caseloom.kindOf(box).said(box); })"
WHOLE = OF + "return caseloom.kindOf(box).whole(box); })"
PUT = OF + "caseloom.kindOf(box).put(box, value); })"
COUNT = """q => { window.heard = 0; const box = document.querySelector(`fieldset[data-question="${q}"]`);
  ['input', 'change'].forEach(name => {
    box.closest('form').addEventListener(name, () => { window.heard += 1; });
  }); }"""


@pytest.fixture
def paper(visit: Visit) -> Page:
    """The page of a test that asks every example."""
    return visit(built()).go(PAPER)


def press(page: Page, keys: list[str]) -> None:
    """Press keys one after another; `type:` types what follows."""
    for key in keys:
        if key.startswith("type:"):
            page.keyboard.type(key.removeprefix("type:"))
        else:
            page.keyboard.press(key)


@pytest.mark.parametrize("example", BY_NAME)
def test_it_is_answered_by_keyboard_alone(paper: Page, example: dict[str, Any]) -> None:
    """From its heading on; the value is the one for the sheet, and a form around it hears of the change."""
    q = example["asked"]["id"]
    assert paper.evaluate(READ, [q, None]) is None
    assert paper.evaluate(SAID, [q, None]) == ""
    paper.evaluate(COUNT, q)
    paper.locator(f"#{q}-n").focus()
    press(paper, example["keys"])
    assert paper.evaluate('document.activeElement.closest("fieldset").dataset.question') == q
    assert paper.evaluate("heard") > 0
    paper.keyboard.press("Tab")
    assert paper.evaluate(READ, [q, None]) == example["value"]
    assert paper.evaluate(SAID, [q, None]) == example["said"]
    assert paper.evaluate(WHOLE, [q, None]) == example.get("whole", True)


@pytest.mark.parametrize("example", BY_NAME)
def test_what_was_read_can_be_shown_again(paper: Page, example: dict[str, Any]) -> None:
    """A value put back is read as itself; null clears; nonsense does no harm and is no answer."""
    q = example["asked"]["id"]
    paper.evaluate(PUT, [q, example["value"]])
    assert paper.evaluate(READ, [q, None]) == example["value"]
    paper.evaluate(PUT, [q, None])
    assert paper.evaluate(READ, [q, None]) is None
    odd: tuple[object, ...] = (["made up"], [["a", "b", "c"]], [[]], 7, {}, True)
    for nonsense in odd:
        paper.evaluate(PUT, [q, nonsense])
        assert paper.evaluate(READ, [q, None]) is None, nonsense


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_checker_finds_nothing(visit: Visit, scheme: str) -> None:
    """Neither untouched nor answered."""
    visitor: Visitor = visit(built(), color_scheme=scheme)
    page = visitor.go(PAPER)
    assert visitor.faults() == []
    for one in EXAMPLES:
        page.evaluate(PUT, [one["asked"]["id"], one["value"]])
    assert visitor.faults() == []


@pytest.mark.parametrize("width", [320, 390, 1280])
def test_it_fits_its_width(visit: Visit, width: int) -> None:
    """No sideways scrolling, and every control to press is at least 24 pixels each way."""
    page = visit(built(), width=width).go(PAPER)
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    small = page.evaluate(
        "[...document.querySelectorAll('fieldset :is(button, select, .option, .field)')]"
        ".filter(one => one.checkVisibility()).map(one => one.getBoundingClientRect())"
        ".filter(box => box.width < 24 || box.height < 24).length"
    )
    assert small == 0


def test_moving_a_step_keeps_the_focus_and_is_said(paper: Page) -> None:
    """The button that was pressed still has the focus, and a status tells the new place."""
    paper.locator("#q1order-n").focus()
    press(paper, ["Tab", "Tab", "Tab", "Enter"])
    assert (
        paper.evaluate("document.activeElement.getAttribute('aria-label')")
        == "Move down: Wind the wrap from below"
    )
    box = paper.locator('fieldset[data-question="q1order"]')
    assert box.locator("[role=status]").inner_text() == "Wind the wrap from below: now in place 2 of 3"
    press(paper, ["Enter", "Enter", "Enter"])
    assert paper.evaluate(READ, ["q1order", None]) == ["o5b", "o5c", "o5a"]


def test_a_number_that_is_none_is_said(paper: Page) -> None:
    """Once the field is left the page says so in words, and is silent again when it is mended."""
    field = paper.locator('fieldset[data-question="q2number"] input')
    line = paper.locator('fieldset[data-question="q2number"] .read')
    field.fill("about ninety")
    assert line.inner_text() == ""
    field.press("Tab")
    assert "cannot be read as a number" in line.inner_text()
    field.fill("90")
    assert line.inner_text() == ""


def test_without_a_script_it_can_be_read_and_printed(visit: Visit) -> None:
    """Every question stands there whole; what only a script can do is not offered, on screen or on paper."""
    page = visit(built(), scripts=False).go("tests/final-a.html")
    for media in ("screen", "print"):
        page.emulate_media(media=media)
        assert page.locator("fieldset:visible").count() == len(EXAMPLES)
        assert page.locator("fieldset button:visible").count() == 0
        assert page.locator(".option.meant:visible").count() == 0
        assert page.locator(".steps select:visible").count() == 10
        assert page.locator(".partners li:visible").count() == 4
