"""The bar's menu and the search in it."""

import pytest

from tests.browser.conftest import Visit
from tests.browser.visitor import Visitor

pytestmark = pytest.mark.browser


def search(visitor: Visitor, words: str) -> list[str]:
    """The titles found for some words, once the menu is open."""
    page = visitor.page
    page.locator(".menu > summary").click()
    page.locator("#find").fill(words)
    page.wait_for_function("document.querySelector('.found').textContent")
    return page.locator(".finds b").all_inner_texts()


@pytest.mark.parametrize("place", ["folder", "server"])
def test_words_find_pages(visit: Visit, served: str, place: str) -> None:
    """From a folder as from a server; case and accents do not matter; a result leads to its page."""
    visitor = visit(served if place == "server" else None)
    page = visitor.go("cases/landing.html")
    assert search(visitor, "FRÍCTION fingertip")[0] == "Cross-fibre friction"
    page.locator(".finds a").first.click()
    assert page.url.endswith("cards/friction.html")


def test_nothing_found_is_said(visit: Visit) -> None:
    """The field says so in a status that is read out."""
    visitor = visit()
    visitor.go("index.html")
    assert search(visitor, "zeppelin") == []
    assert visitor.page.locator(".found[role=status]").inner_text().startswith("Nothing found")


def test_tests_and_answers_are_not_found(visit: Visit) -> None:
    """Neither a question of a test nor the reasons of a practice case can be searched."""
    visitor = visit()
    visitor.go("index.html")
    assert search(visitor, "pad felt too tight") == []


def test_the_index_is_loaded_only_when_needed(visit: Visit) -> None:
    """A page that is not searched asks for no index."""
    visitor = visit()
    visitor.go("index.html")
    assert not [url for url in visitor.requests if "search_index" in url]


def test_the_menu_works_by_keyboard(visit: Visit) -> None:
    """It opens with Enter, is left with Escape, and gives the focus back."""
    visitor = visit()
    page = visitor.go("cards/friction.html")
    visitor.tab_to(".menu > summary")
    page.keyboard.press("Enter")
    visitor.tab_to("#find")
    visitor.tab_to(".panel nav a")
    page.keyboard.press("Escape")
    assert not page.locator(".panel").is_visible()
    assert page.evaluate("document.activeElement.matches('.menu > summary')")


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_the_menu(visit: Visit, scheme: str) -> None:
    """The open menu with results has no fault."""
    visitor = visit(color_scheme=scheme)
    visitor.go("cards/friction.html")
    search(visitor, "friction")
    assert visitor.faults() == []


def test_the_way_past_the_bar(visit: Visit) -> None:
    """The first Tab offers it, and it leads into the page without touching the address."""
    visitor = visit()
    page = visitor.go("tests/final-a.html")
    page.keyboard.press("Tab")
    assert page.locator(".skip").is_visible()
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.id") == "page"
    assert "#" not in page.url


def test_the_menu_works_without_script(visit: Visit) -> None:
    """Contents are there, a search that could not work is not."""
    page = visit(scripts=False).go("index.html")
    page.locator(".menu > summary").click()
    assert page.locator(".panel nav a").first.is_visible()
    assert not page.locator("#find").is_visible()
