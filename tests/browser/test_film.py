"""A film in a lesson, opened from a folder: captions, chapters and words, by mouse and by keyboard."""

from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.browser.conftest import Visit
from tests.render.filmed import NAME, filmed, filmed_site

ADDRESS = "lessons/phases.html"
WIDTHS = (390, 1280)
SCHEMES = ("light", "dark")

pytestmark = pytest.mark.browser


@pytest.fixture
def page(visit: Visit) -> Page:
    """The lesson, as soon as the film knows how long it is."""
    return opened(visit, filmed_site())


def opened(visit: Visit, root: str | Path) -> Page:
    """The lesson from a folder or a server."""
    page = visit(root).go(ADDRESS)
    page.wait_for_function("document.querySelector('video').readyState > 0")
    return page


def shown(page: Page) -> list[str]:
    """The captions that stand on the picture now."""
    texts: list[str] = page.evaluate(
        "Array.from(document.querySelector('video').textTracks[0].activeCues || []).map(one => one.text)"
    )
    return texts


def time(page: Page) -> float:
    """Where the film is, in seconds."""
    now: float = page.evaluate("document.querySelector('video').currentTime")
    return now


def pause_at(page: Page, seconds: float) -> None:
    """Stop the film at a time, and wait until its picture is there."""
    page.evaluate(
        """seconds => new Promise(done => {
            const video = document.querySelector('video');
            video.pause();
            video.addEventListener('seeked', () => setTimeout(done, 100), { once: true });
            video.currentTime = seconds;
        })""",
        seconds,
    )


def test_it_plays_from_a_folder(page: Page) -> None:
    """The picture moves, and is as long as its captions count on."""
    assert page.evaluate("document.querySelector('video').duration") == pytest.approx(28, abs=0.01)
    page.evaluate("document.querySelector('video').play()")
    page.wait_for_function("document.querySelector('video').currentTime > 0.3")


def test_captions_are_those_of_the_file(page: Page) -> None:
    """Every cue with its times and its words, shown without being asked for."""
    cues = page.evaluate(
        """() => {
            const track = document.querySelector('video').textTracks[0];
            return [track.kind, track.mode, track.language,
                Array.from(track.cues).map(one => [one.startTime, one.endTime, one.text])];
        }"""
    )
    captions = filmed().films[NAME].captions
    assert captions is not None
    written = [[one.start / 1000, one.end / 1000, one.text] for one in captions.cues]
    assert cues == ["captions", "showing", "en", written]


def test_the_caption_of_the_moment_stands_on_the_picture(page: Page) -> None:
    """And its line is marked in the list, with its chapter."""
    pause_at(page, 16)
    assert shown(page) == ["Look again within 15 minutes: colour, warmth, feeling."]
    assert page.locator(".lines [aria-current]").all_inner_texts() == [
        "0:15\nLook again within 15 minutes: colour, warmth, feeling."
    ]
    assert page.locator(".chapters [aria-current]").inner_text().startswith("The second look")
    pause_at(page, 0.2)
    assert shown(page) == []
    assert page.locator(".lines [aria-current]").count() == 0


def test_a_chapter_leads_to_its_place(page: Page) -> None:
    """A press jumps there, also backwards, and plays on."""
    for name, start, end in (("The wrap", 7, 15), ("The pad", 0, 7)):
        page.locator(".chapters button", has_text=name).click()
        page.wait_for_function("!document.querySelector('video').seeking")
        assert start <= time(page) < end
        assert page.evaluate("document.querySelector('video').paused") is False


def test_the_keyboard_leads_through_all_of_it(visit: Visit) -> None:
    """Tab reaches player, chapters and one line; arrows lead through the lines; Enter jumps."""
    visitor = visit(filmed_site())
    page = visitor.go(ADDRESS)
    visitor.tab_to("video")
    visitor.tab_to(".chapters li:last-child button")
    page.keyboard.press("Enter")
    page.wait_for_function("document.querySelector('video').currentTime >= 15")
    visitor.tab_to(".lines li:first-child button")
    for key, place in (("ArrowUp", 1), ("ArrowDown", 2), ("End", 8), ("ArrowDown", 8), ("Home", 1)):
        page.keyboard.press(key)
        assert page.evaluate(f"document.activeElement.matches('.lines li:nth-child({place}) button')"), key
    page.keyboard.press("ArrowDown")
    page.keyboard.press("Enter")
    page.wait_for_function("document.querySelector('video').currentTime < 15")
    page.keyboard.press("Tab")
    assert not page.evaluate("document.activeElement.matches('.film *')")


def test_space_and_arrows_work_in_the_player(visit: Visit) -> None:
    """The browser's own keys are left alone."""
    visitor = visit(filmed_site())
    page = visitor.go(ADDRESS)
    page.wait_for_function("document.querySelector('video').readyState > 0")
    visitor.tab_to("video")
    page.keyboard.press("Space")
    page.wait_for_function("!document.querySelector('video').paused")


def test_the_list_follows_and_never_moves_the_page(page: Page) -> None:
    """The present line is brought into sight within its box."""
    before = page.evaluate("window.scrollY")
    pause_at(page, 27)
    box, line = (page.locator(one).bounding_box() for one in (".lines", ".lines [aria-current]"))
    assert box
    assert line
    assert box["y"] <= line["y"] <= line["y"] + line["height"] <= box["y"] + box["height"] + 1
    assert page.evaluate("window.scrollY") == before


def test_without_a_script_all_of_it_can_be_read(visit: Visit) -> None:
    """The film has the browser's controls, and every line and chapter is text."""
    page = visit(filmed_site(), scripts=False).go(ADDRESS)
    assert page.locator("video[controls]").is_visible()
    assert page.locator(".film button").count() == 0
    assert all(one.is_visible() for one in page.locator(".film li").all())
    assert not page.locator(".film .hint").is_visible()


def test_on_paper_all_of_it_can_be_read(page: Page) -> None:
    """Lines and chapters whole and in sight, without the player."""
    page.emulate_media(media="print")
    assert not page.locator("video").is_visible()
    assert page.evaluate(
        "document.querySelector('.lines').scrollHeight <= document.querySelector('.lines').clientHeight"
    )
    assert all(one.is_visible() for one in page.locator(".film li span").all())
    assert len(page.locator(".film li span").all()) == 11


@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("scheme", SCHEMES)
def test_axe_finds_nothing(visit: Visit, width: int, scheme: str) -> None:
    """With a line and a chapter marked, on a phone and at a desk."""
    visitor = visit(filmed_site(), width=width, color_scheme=scheme)
    page = visitor.go(ADDRESS)
    page.wait_for_function("document.querySelector('video').readyState > 0")
    pause_at(page, 16)
    assert visitor.faults() == []


def test_it_fits_a_narrow_phone(visit: Visit) -> None:
    """Nothing sticks out at 320 pixels, and every target is large enough for a thumb."""
    page = visit(filmed_site(), width=320).go(ADDRESS)
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    boxes = [one.bounding_box() for one in page.locator(".film button").all()]
    assert boxes
    assert all(box and box["height"] >= 44 for box in boxes)
