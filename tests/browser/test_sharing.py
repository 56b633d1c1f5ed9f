"""A device that many use: the next person finds nothing of the one before."""

import pytest
from playwright.sync_api import Page

from tests.browser.codes import code_for
from tests.browser.conftest import Visit
from tests.browser.test_code import typed
from tests.browser.test_handing import HOST, hand_in, receive
from tests.browser.test_keeping import sure
from tests.browser.test_taking import chosen, option

pytestmark = pytest.mark.browser
CODE = code_for("A")
HELD = """
new Promise(done => {
  const asked = indexedDB.open('caseloom', 1);
  asked.onsuccess = () => {
    const keys = asked.result.transaction('answers').objectStore('answers').getAllKeys();
    keys.onsuccess = () => { asked.result.close(); done(keys.result.concat(Object.keys(localStorage))); };
  };
})
"""


def sit_down(page: Page, code: str = CODE) -> None:
    """Give a code at the entry of a shared device, and answer."""
    typed(page, code)
    page.wait_for_selector("#paper:not([hidden])")
    option(page, 0, 1)
    sure(page)


def test_the_switch_goes_along_and_the_code_does_not(visit: Visit) -> None:
    """Ticked at the entry it stays for all who follow; the code stands in no address."""
    page = visit().go("tests/final.html#class=spring")
    page.get_by_label("Several people use this device").check()
    sit_down(page)
    assert page.url.endswith("final-a.html#class=spring&shared")
    page.reload()
    sure(page)
    assert chosen(page) == ["pack"]


def test_the_next_person_finds_nothing(visit: Visit) -> None:
    """After the receipt all is cleared: answers, practice, notes, address; and going back brings nothing."""
    visitor = visit()
    visitor.context.add_init_script(HOST)
    page = visitor.go("tests/final.html#class=spring&shared")
    for part in ("practice", "after"):
        page.evaluate("name => localStorage.setItem(name, '{}')", f"caseloom/{part}/a_course/notes")
    sit_down(page)
    hand_in(page)
    assert page.locator("#pass").is_disabled()
    receive(page)
    page.wait_for_selector("#pass:not([disabled])")
    page.locator("#pass").click()
    page.wait_for_url("**/final.html#class=spring&shared")
    assert page.locator("#code").input_value() == ""
    assert page.evaluate(HELD) == []
    assert page.evaluate("sessionStorage.length") == 0
    page.go_back()
    page.wait_for_timeout(200)
    assert CODE not in page.content()
    assert CODE not in page.url


def test_a_saved_sheet_must_have_been_seen(visit: Visit) -> None:
    """Without a host, clearing waits for the file and for the word that it is there."""
    page = visit().go("tests/final.html#shared")
    sit_down(page)
    hand_in(page)
    assert page.locator("#pass").is_disabled()
    assert not page.locator("#pass-saved").is_visible()
    with page.expect_download():
        page.locator("#sheet-file").click()
    assert page.locator("#pass").is_disabled()
    page.locator("#pass-saved").check()
    page.locator("#pass").click()
    page.wait_for_url("**/final.html#shared")
    assert page.evaluate(HELD) == []


def test_a_change_after_saving_takes_the_clearing_back(visit: Visit) -> None:
    """What was saved is no longer what was answered, so nothing can be cleared."""
    page = visit().go("tests/final.html#shared")
    sit_down(page)
    hand_in(page)
    with page.expect_download():
        page.locator("#sheet-file").click()
    page.locator("#pass-saved").check()
    option(page, 0, 0)
    assert not page.locator("#pass").is_visible()
    hand_in(page)
    assert page.locator("#pass").is_disabled()


def test_another_persons_unfinished_answers_stay(visit: Visit) -> None:
    """Clearing one person touches nobody else."""
    visitor = visit()
    visitor.context.add_init_script(HOST)
    other = code_for("A", "4G9K2MX")
    page = visitor.go("tests/final.html#shared")
    sit_down(page, other)
    page = visitor.go("tests/final.html?next#shared")
    sit_down(page)
    second = visitor.context.new_page()
    second.goto(f"{visitor.root}tests/final-a.html#code={CODE}")
    assert chosen(second) == ["pack"]
    hand_in(page)
    receive(page)
    page.locator("#pass:not([disabled])").click()
    page.wait_for_url("**/final.html#shared")
    assert {name.split("/")[-1] for name in page.evaluate(HELD)} == {other}
    second.wait_for_url("**/final.html")


def test_a_device_of_ones_own_offers_no_clearing(visit: Visit) -> None:
    """Where nobody said that it is shared, nothing of it is shown."""
    page = visit().go(f"tests/final-a.html#code={CODE}")
    hand_in(page)
    assert not page.locator("#pass-on").is_visible()
