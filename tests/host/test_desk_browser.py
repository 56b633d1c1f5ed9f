"""The instructor's page and the room's screen in a browser: live, legible, and by keyboard."""

import json
from collections.abc import Iterator
from pathlib import Path

import pytest
import zxingcpp
from playwright.sync_api import Browser, Error, Page, expect

from tests.axe import violations
from tests.doors.pixels import pixels_of
from tests.doors.serve.asking import Place
from tests.host.made import Host, codes, desk_of, made, sheet

pytestmark = pytest.mark.browser
SOON = 20_000


@pytest.fixture
def host(tmp_path: Path) -> Iterator[tuple[Host, Place]]:
    """A host whose instructor's pages are served."""
    found = made(tmp_path)
    with desk_of(found) as place:
        yield found, place
    found.entrance.shut()
    assert place.troubles == []


def come(
    browser: Browser, host: tuple[Host, Place], width: int = 1280, height: int = 720, **more: object
) -> Page:
    """An instructor who opened the address in the terminal; what the page complains of is trouble."""
    size = {"width": width, "height": height}
    page = browser.new_context(viewport=size, **more).new_page()  # type: ignore[arg-type]

    def failed(error: Error) -> None:
        host[1].troubles.append(error)

    page.on("pageerror", failed)
    page.on(
        "console",
        lambda told: host[1].troubles.append(ValueError(told.text)) if "Policy" in told.text else None,
    )
    page.goto(f"http://{host[1].host}/?key={host[0].own.key}")
    expect(page.locator("#people li")).to_have_count(8)
    return page


def test_a_class_at_the_instructors_page(browser: Browser, host: tuple[Host, Place]) -> None:
    """Opens the hall, sees people join and hand in without loading again, shuts the hall; all by keyboard."""
    page = come(browser, host)
    assert "key" not in page.url
    button = page.get_by_role("button", name="127.0.0.1")
    button.focus()
    page.keyboard.press("Enter")
    expect(page.locator("#way")).to_contain_text("http://127.0.0.1:", timeout=SOON)
    assert page.locator("#way").inner_text() == host[0].entrance.way
    host[0].ask("/here", json.dumps({"code": codes()[1], "answered": 2, "of": 9}).encode())
    expect(page.locator("#people li").nth(1)).to_contain_text("2 of 9 answered", timeout=SOON)
    host[0].ask("/hand", sheet(codes()[0]))
    host[0].ask("/hand", b"odd")
    expect(page.locator("#people li").nth(0)).to_contain_text("handed in", timeout=SOON)
    expect(page.locator("#aside-list li")).to_have_count(1, timeout=SOON)
    page.get_by_role("button", name="Shut the hall").focus()
    page.keyboard.press("Enter")
    expect(button).to_be_visible(timeout=SOON)
    assert host[0].entrance.way == ""
    page.context.close()


def test_the_room_can_read_the_square(browser: Browser, host: tuple[Host, Place]) -> None:
    """From a projector's picture: the address of the test, with the class; the numbers follow; no names."""
    host[0].entrance.open("127.0.0.1")
    page = come(browser, host)
    with page.context.expect_page() as opening:
        page.get_by_role("link", name="Final test").click()
    screen = opening.value
    screen.set_viewport_size({"width": 1280, "height": 720})
    expect(screen.locator(".square")).to_be_visible()
    (read,) = zxingcpp.read_barcodes(pixels_of(screen))
    assert read.text == f"{host[0].entrance.way}tests/final.html#class=spring"
    assert screen.evaluate("document.documentElement.scrollHeight <= innerHeight")
    host[0].ask("/hand", sheet(codes()[0]))
    expect(screen.locator("#counts div").filter(has_text="handed in").locator("dd")).to_have_text(
        "1", timeout=SOON
    )
    assert not [one.name for one in host[0].desk.taught.participants if one.name in screen.content()]
    host[0].entrance.shut()
    expect(screen.locator(".square")).to_have_count(0, timeout=SOON)
    page.context.close()


@pytest.mark.parametrize(("width", "scheme"), [(320, "dark"), (1280, "light")])
def test_nothing_is_in_the_way(browser: Browser, host: tuple[Host, Place], width: int, scheme: str) -> None:
    """The accessibility checker finds nothing, and nothing runs off the side; on a phone as on a desk."""
    host[0].ask("/hand", sheet(codes()[0]))
    host[0].ask("/hand", b"odd")
    host[0].notices.add("moved", "host_moved", address="192.168.43.1")
    page = come(browser, host, width, 800, color_scheme=scheme)
    for address in ("/", "/screen", "/?key=used"):
        if address == "/screen":
            host[0].entrance.open("127.0.0.1")
        page.goto(f"http://{host[1].host}{address}")
        assert violations(page) == []
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), address
    page.context.close()


def test_the_end_of_the_host_is_said(browser: Browser, tmp_path: Path) -> None:
    """On the page that stays open."""
    found = made(tmp_path)
    with desk_of(found) as place:
        page = come(browser, (found, place))
    expect(page.locator("#notices")).to_contain_text("Start it again", timeout=SOON)
    page.context.close()
