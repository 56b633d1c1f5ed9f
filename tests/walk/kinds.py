"""Every kind of page in each of its states: the one list that all tests of look and access walk."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from playwright.sync_api import Page

from tests.browser.codes import code_for

PUBLISH, PRIVATE = "publish", "private/instructor"


def as_it_is(_: Page) -> None:
    """The page as it opens."""


def unfolded(page: Page) -> None:
    """With everything in the page that can be unfolded."""
    page.evaluate("document.querySelectorAll('.page details').forEach(one => { one.open = true; })")


def first_unfolded(page: Page) -> None:
    """With the first ten of many parts that are all alike, unfolded."""
    page.evaluate("[...document.querySelectorAll('.page details')].slice(10).forEach(one => one.remove())")
    unfolded(page)


def decided(page: Page) -> None:
    """A practice case, its first visit decided, and the way to the next taken."""
    while page.locator(".visit:not([hidden]) .step:not([hidden]) .decide:visible").count():
        step = page.locator(".visit:not([hidden]) .step:not([hidden])").last
        step.locator(".option").first.click()
        step.locator(".decide").click()
    unfolded(page)


def nothing_chosen(page: Page) -> None:
    """A practice case that is decided without a choice."""
    page.locator(".decide:visible").first.click()


def wrong_code(page: Page) -> None:
    """A code that is not whole."""
    page.locator("#code").fill("3F9")
    page.locator(".code-form button").click()


def reviewed(page: Page) -> None:
    """A test with one answer, looked over."""
    page.locator(".question .option").first.click()
    page.locator("#to-review").click()


def handed_in(page: Page) -> None:
    """A test whose answer sheet is made."""
    reviewed(page)
    page.locator("#finish").click()
    page.locator("#handing summary").first.click()


def menu(page: Page) -> None:
    """With the menu open."""
    page.locator(".menu > summary").click()


def found(page: Page) -> None:
    """With the menu open and something searched for."""
    menu(page)
    page.locator("#find").fill("thigh")
    page.wait_for_function("document.querySelector('.found').textContent")


def not_found(page: Page) -> None:
    """With the menu open and something searched for that is not there."""
    menu(page)
    page.locator("#find").fill("zeppelin")
    page.wait_for_function("document.querySelector('.found').textContent")


def opened_up(page: Page) -> None:
    """A room view in the middle of a question, its answer shown."""
    for _ in range(3):
        page.keyboard.press("PageDown")


def days_told(page: Page) -> None:
    """After the course, asked for a calendar without a day, and then with one."""
    page.locator(".ended button").click()
    page.locator("#ended").fill("2026-04-19")
    page.locator(".ended button").click()


def about_to_clear(page: Page) -> None:
    """What somebody wrote, about to be cleared."""
    page.locator("[data-field]").first.fill("Ask first")
    page.locator(".clear .first").click()
    page.evaluate("scrollTo(0, 0)")


def begun(page: Page) -> None:
    """Answers from paper, a sheet begun and a line of it wrong."""
    page.locator("#code").fill(code_for("A"))
    page.keyboard.press("Enter")
    page.keyboard.type("?A")
    page.locator("#typing-on").click()


@dataclass(frozen=True)
class Kind:
    """A kind of page in one state: our name, the page's own, its address, and how to get there."""

    name: str
    page: str
    address: str
    ready: Callable[[Page], None] = as_it_is
    side: str = PUBLISH


CODE = f"#code={code_for('A')}&class=spring"
KINDS: tuple[Kind, ...] = (
    Kind("start", "start", "index.html"),
    Kind("menu", "start", "index.html", menu),
    Kind("search", "start", "index.html", found),
    Kind("search, nothing found", "start", "index.html", not_found),
    Kind("lesson", "lesson", "lessons/phases.html", unfolded),
    Kind("lesson with questions", "lesson", "lessons/dose.html", unfolded),
    Kind("case", "case", "cases/unicycle-thigh.html"),
    Kind("case, decided", "case", "cases/unicycle-thigh.html", decided),
    Kind("case, nothing chosen", "case", "cases/unicycle-thigh.html", nothing_chosen),
    Kind("cards", "cards", "cards/index.html"),
    Kind("card", "card", "cards/friction.html", unfolded),
    Kind("card of an action", "card", "cards/refer.html", unfolded),
    Kind("red flags", "flags", "red-flags.html"),
    Kind("after the course", "after", "after/index.html", days_told),
    Kind("one week after", "spaced", "after/one-week.html", unfolded),
    Kind("my changes", "own", "after/my-changes.html", about_to_clear),
    Kind("my sheet", "own", "after/my-sheet.html"),
    Kind("no page", "lost", "404.html"),
    Kind("entry", "entry", "tests/final.html"),
    Kind("entry, wrong code", "entry", "tests/final.html", wrong_code),
    Kind("test without a code", "version", "tests/final-a.html"),
    Kind("test", "version", f"tests/final-a.html{CODE}"),
    Kind("test, looked over", "version", f"tests/final-a.html{CODE}", reviewed),
    Kind("test, handed in", "version", f"tests/final-a.html{CODE}", handed_in),
    Kind("instructor", "start", "index.html", side=PRIVATE),
    Kind("instructor's case", "key", "cases/unicycle-thigh.html", first_unfolded, PRIVATE),
    Kind("room", "room", "room/unicycle-thigh.html", side=PRIVATE),
    Kind("room, answered", "room", "room/unicycle-thigh.html", opened_up, PRIVATE),
    Kind("key", "key", "tests/final-a.html", unfolded, PRIVATE),
    Kind("key on one sheet", "table", "tests/final-a-table.html", side=PRIVATE),
    Kind("booklet", "handouts", "paper/final-a.html", side=PRIVATE),
    Kind("booklet in large print", "handouts", "paper/final-a-large.html", side=PRIVATE),
    Kind("answer sheet", "handouts", "paper/final-a-answers.html", side=PRIVATE),
    Kind("typing in", "typing", "paper/final.html", begun, PRIVATE),
    Kind("matrix", "matrix", "matrix.html", side=PRIVATE),
    Kind("policies", "policies", "policies.html", side=PRIVATE),
    Kind("coverage", "coverage", "coverage.html", side=PRIVATE),
    Kind("rules", "rules", "rules.html", first_unfolded, PRIVATE),
    Kind("cards in full", "cards", "cards.html", first_unfolded, PRIVATE),
    Kind("sources", "sources", "sources.html", first_unfolded, PRIVATE),
    Kind("station", "station", "stations/friction-station.html", side=PRIVATE),
    Kind("station's handouts", "handouts", "stations/friction-station-handouts.html", side=PRIVATE),
    Kind("station's sheet", "sheet", "stations/friction-station-sheet.html", side=PRIVATE),
    Kind("instructor's red flags", "flags", "red-flags.html", side=PRIVATE),
)
STUDENTS = tuple(kind for kind in KINDS if kind.side == PUBLISH)
