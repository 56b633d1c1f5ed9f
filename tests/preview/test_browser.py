"""The preview in a browser: a save changes the page by itself, a fault opens the panel and blanks nothing."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from threading import Event, Thread

import pytest
from playwright.sync_api import Browser, Page, expect

from builder.doors.cache import NoCache
from builder.doors.serve import LOOPBACK, Served, Server, reserve
from builder.flow.live import Live
from builder.preview.pages import NOTICES, Pages
from builder.preview.run import follow
from tests.demo.small import small_course

pytestmark = pytest.mark.browser
SOON = 60_000


@dataclass(frozen=True)
class Open:
    """A course under preview: its folder and where it is served."""

    folder: Path
    address: str

    def save(self, pattern: str, new: str) -> str:
        """Save one change of the case on the page; the text before."""
        path = self.folder / "cases" / "stilt_ankle.yml"
        text = path.read_text(encoding="utf-8")
        path.write_text(re.sub(pattern, new, text, count=1), encoding="utf-8")
        return text


@pytest.fixture(scope="module")
def course(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Open]:
    """A preview that runs for all tests here."""
    folder = small_course(tmp_path_factory.mktemp("preview") / "course")
    live, taken, stop = Live(folder, NoCache()), reserve(0), Event()
    live.refresh()
    pages = Pages(live)
    server = Server(Served(pages.answer, lambda: live.shown.version, NOTICES))
    works = [
        Thread(target=server.run, args=(taken,)),
        Thread(target=follow, args=(live, folder, stop, lambda _: None)),
    ]
    for work in works:
        work.start()
    yield Open(folder, f"http://{LOOPBACK}:{taken.getsockname()[1]}")
    stop.set()
    server.stop()
    for work in works:
        work.join()
    pages.close()


@pytest.fixture
def page(browser: Browser, course: Open) -> Iterator[Page]:
    """The page of a case, on a phone, with everything it complains of held to be nothing."""
    said: list[str] = []
    visitor = browser.new_page(viewport={"width": 390, "height": 844})
    visitor.on("console", lambda message: said.append(message.text))
    visitor.on("pageerror", lambda error: said.append(str(error)))
    visitor.goto(f"{course.address}/students/cases/stilt-ankle.html")
    yield visitor
    visitor.close()
    assert said == []


def test_a_save_changes_the_page_by_itself(course: Open, page: Page) -> None:
    """Nobody loads it again."""
    course.save(r"(?m)^mechanism: .*", "mechanism: The tent peg was not even there.")
    expect(page.locator("#page")).to_contain_text("not even there", timeout=SOON)
    expect(page.locator(".caseloom-panel details")).not_to_have_attribute("open", "")


def test_a_fault_opens_the_panel_and_the_page_stays(course: Open, page: Page) -> None:
    """With the whole name of the file, the line, the remedy; mended, it closes again."""
    story = page.locator("#page").inner_text()
    good = course.save("mechanism:", "mechanizm:")
    fault = page.locator(".caseloom-panel li.is-error").filter(has_text="mechanizm").first
    expect(fault).to_be_visible(timeout=SOON)
    expect(fault).to_contain_text("cases/stilt_ankle.yml, line ")
    expect(fault).to_contain_text("Did you mean `mechanism`?")
    expect(page.locator(".caseloom-panel")).to_contain_text("last good state")
    assert page.locator("#page").inner_text() == story
    place = fault.locator("p").first
    assert place.evaluate("one => one.scrollWidth <= one.clientWidth")
    assert place.evaluate("one => getComputedStyle(one).textOverflow") == "clip"
    (course.folder / "cases" / "stilt_ankle.yml").write_text(good, encoding="utf-8")
    expect(page.locator(".caseloom-panel li.is-error")).to_have_count(0, timeout=SOON)
    expect(page.locator(".caseloom-panel details")).not_to_have_attribute("open", "")


def test_the_panel_leaves_the_page_usable(course: Open, page: Page) -> None:
    """It can be folded by keyboard and stays folded when the page loads again; nothing runs off the side."""
    good = course.save("mechanism:", "mechanizm:")
    panel = page.locator(".caseloom-panel details")
    expect(panel).to_have_attribute("open", "", timeout=SOON)
    panel.locator("summary").focus()
    page.keyboard.press("Enter")
    expect(panel).not_to_have_attribute("open", "")
    page.reload()
    expect(panel).not_to_have_attribute("open", "")
    assert page.evaluate("document.documentElement.scrollWidth <= window.innerWidth")
    (course.folder / "cases" / "stilt_ankle.yml").write_text(good, encoding="utf-8")
    expect(page.locator(".caseloom-panel.is-error")).to_have_count(0, timeout=SOON)


def test_the_other_side_is_one_step_away(page: Page) -> None:
    """The same case with its key, and the way back."""
    page.get_by_role("link", name="Instructor’s side").click()
    expect(page.locator(".private-mark")).to_be_visible()
    page.get_by_role("link", name="Students’ side").click()
    expect(page.locator(".caseloom-panel")).to_be_visible()
