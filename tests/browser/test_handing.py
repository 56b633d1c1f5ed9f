"""Handing in to a host: sent until it has arrived, told in words, never twice."""

import json
from pathlib import Path

import pytest
from playwright.sync_api import Page

from builder.model.handed import sheet_of
from tests.browser.conftest import Visit
from tests.browser.test_keeping import sure
from tests.browser.test_taking import PAPER, option
from tests.browser.visitor import Visitor

pytestmark = pytest.mark.browser

# A host as the page knows it: every sheet it is given, and what it does with each.
HOST = """
window.asked = [];
window.caseloom = { hand: {
  take: (text, told) => new Promise((done, fail) => {
    told('asking');
    asked.push({ text, told, done, fail });
  }),
  here: (code, answered, of) => { window.stand = [code, answered, of]; }
} };
"""


def guest(visit: Visit) -> Visitor:
    """Somebody whose pages come from a host."""
    visitor = visit()
    visitor.context.add_init_script(HOST)
    return visitor


def hand_in(page: Page) -> None:
    """Look over and finish."""
    page.locator("#to-review").click()
    page.locator("#finish").click()


def receive(page: Page, number: int = 0) -> None:
    """The host takes what it was given."""
    page.evaluate(f"asked[{number}].done({{received: 17, at: '2026-11-25T10:42:00Z'}})")


def state(page: Page) -> tuple[str, str, str]:
    """What the page says of handing in: state, heading, line."""
    post = page.locator("#post")
    return (
        post.get_attribute("data-state") or "",
        page.locator("#handing-title").inner_text(),
        page.locator("#post-said").inner_text(),
    )


def test_a_receipt_is_shown_and_kept(visit: Visit) -> None:
    """Sending, then received with number and time; after a reload as well, and without sending again."""
    page = guest(visit).go(PAPER)
    option(page, 0, 1)
    hand_in(page)
    assert page.locator("#finish").inner_text() == "Hand in my answers"
    assert state(page)[:2] == ("sending", "Handing in your answers")
    assert page.locator("#post-said").get_attribute("role") == "status"
    receive(page)
    page.wait_for_selector("#post[data-state=received]")
    assert state(page)[1] == "Your answers have been received"
    assert state(page)[2].startswith("Receipt 17, ")
    sure(page)
    page.reload()
    page.wait_for_selector("#post[data-state=received]")
    assert page.evaluate("asked.length") == 0


def test_what_is_sent_is_the_file(visit: Visit, tmp_path: Path) -> None:
    """Byte for byte the sheet that would be saved, so that both count once."""
    page = guest(visit).go(PAPER)
    option(page, 0, 1)
    hand_in(page)
    with page.expect_download() as coming:
        page.locator("#sheet-file").click()
    coming.value.save_as(tmp_path / "sheet.json")
    sent: str = page.evaluate("asked[0].text")
    assert (tmp_path / "sheet.json").read_bytes() == sent.encode()
    assert sheet_of(sent.encode()).answers[0].value == "pack"


def test_a_host_that_is_gone_is_waited_for(visit: Visit) -> None:
    """Said, kept over a reload, sent again by itself, and received in the end: one sheet, one revision."""
    page = guest(visit).go(PAPER)
    option(page, 0, 1)
    hand_in(page)
    page.evaluate("asked[0].told('waiting')")
    assert state(page)[:2] == ("waiting", "Not handed in yet")
    assert page.locator("#post-again").is_visible()
    first: str = page.evaluate("asked[0].text")
    sure(page)
    page.reload()
    page.wait_for_function("window.asked.length === 1")
    assert page.evaluate("asked[0].text") == first
    receive(page)
    page.wait_for_selector("#post[data-state=received]")
    page.locator("#finish").evaluate("button => button.click()")
    assert page.evaluate("asked.length") == 1


def test_a_refusal_is_told_in_its_words(visit: Visit) -> None:
    """What the host has against a sheet stands there; trying again asks again, saving stays possible."""
    page = guest(visit).go(PAPER)
    option(page, 0, 1)
    hand_in(page)
    page.evaluate("asked[0].fail(Object.assign(new Error('Not in the roster.'), {refused: true}))")
    page.wait_for_selector("#post[data-state=refused]")
    assert state(page)[1:] == ("Your answer sheet was not taken", "Not in the roster.")
    assert page.locator("#sheet-file").is_visible()
    page.locator("#post-again").click()
    assert page.evaluate("asked.length") == 2


def test_a_changed_answer_goes_as_the_next_revision(visit: Visit) -> None:
    """The receipt belongs to one revision; a change makes a new one, sent when it is finished."""
    page = guest(visit).go(PAPER)
    option(page, 0, 1)
    hand_in(page)
    receive(page)
    page.wait_for_selector("#post[data-state=received]")
    option(page, 0, 0)
    assert not page.locator("#handing").is_visible()
    hand_in(page)
    sheets = [json.loads(text) for text in page.evaluate("asked.map(one => one.text)")]
    assert [one["rev"] for one in sheets] == [1, 2]
    assert sheets[0]["sheet"] == sheets[1]["sheet"]
    assert state(page)[0] == "sending"
    receive(page, 1)
    page.wait_for_selector("#post[data-state=received]")


def test_the_host_hears_how_far_one_is(visit: Visit) -> None:
    """Code, questions answered, questions in all: no answer."""
    page = guest(visit).go(PAPER)
    option(page, 1, 1)
    assert page.evaluate("stand.slice(1)") == [1, 3]


def test_without_a_host_nothing_is_said_of_one(visit: Visit) -> None:
    """A page from a folder offers the file and the text alone."""
    page = visit().go(PAPER)
    hand_in(page)
    assert not page.locator("#post").is_visible()
    assert page.locator("#handing-title").inner_text() == "Your answer sheet is ready"


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("how", ["waiting", "received"])
def test_axe_finds_nothing_in_any_state(visit: Visit, scheme: str, how: str) -> None:
    """With a host that is gone and with a receipt, on a shared device."""
    visitor = visit(color_scheme=scheme)
    visitor.context.add_init_script(HOST)
    page = visitor.go(PAPER + "&shared")
    option(page, 0, 1)
    hand_in(page)
    page.evaluate("asked[0].told('waiting')") if how == "waiting" else receive(page)
    page.wait_for_selector(f"#post[data-state={how}]")
    page.locator("#drafts summary").click()
    assert visitor.faults() == []
