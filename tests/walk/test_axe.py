"""The accessibility checker on every kind of page: no fault, and nothing left open without our answer."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.axe import COLOURS, looked
from tests.walk.kinds import KINDS
from tests.walk.sites import plain
from tests.walk.walker import Scheme, walker

pytestmark = pytest.mark.browser
WIDTHS = (320, 390, 1280)
CONTRAST = (Path(__file__).parent / "contrast.js").read_text(encoding="utf-8")
WORDS = re.compile(r"[^\W\d_]{2,}")
CAPTIONED = """places => places.map(place => [...document.querySelector(place).textTracks]
  .some(track => track.kind === 'captions' && track.cues.length))"""
# What lies under the bar at one place of scrolling is no matter of the page: `test_keyboard` looks at that.
FLAT = ".bar { position: relative !important; } .presenter { position: static !important; }"


def without_captions(page: Page, places: list[str]) -> list[str]:
    """Of these films the ones that show no captions of their own."""
    told: list[bool] = page.evaluate(CAPTIONED, places)
    return [f"{place} has no captions" for place, has in zip(places, told, strict=True) if not has]


def worded(page: Page, places: list[str]) -> list[str]:
    """Of these places the ones that show words; a name that says more than an arrow mismatches nothing."""
    told: list[str] = page.evaluate(
        "places => places.map(at => document.querySelector(at).innerText)", places
    )
    return [f"{place} shows “{text}”" for place, text in zip(places, told, strict=True) if WORDS.search(text)]


def too_faint(page: Page, places: list[str]) -> list[str]:
    """Of these places the ones whose text has too little contrast with what it stands on, by our own sums."""
    told = page.evaluate(CONTRAST, places)
    return [f"{place} has {ratio:.2f}, needs {least}" for place, ratio, least in told if ratio < least]


@dataclass(frozen=True)
class Open:
    """What the checker leaves open, by its rule: why it cannot tell, and our own look at it."""

    rule: str
    why: str
    look: Callable[[Page, list[str]], list[str]]


OPEN = (
    Open(
        "color-contrast",
        "Something stands before the text (the open menu) or it is drawn over shapes, on a halo of its own.",
        too_faint,
    ),
    Open(
        "label-content-name-mismatch",
        "A button shows an arrow and says in words what it moves: there is no shown word to repeat.",
        worded,
    ),
    Open(
        "video-caption",
        "Captions stand in the page as text and become a track by script: from a folder no file is read.",
        without_captions,
    ),
)


def answered(page: Page, left: list[tuple[str, str]]) -> list[str]:
    """What is wrong with what the checker leaves open; and what it leaves open that we have no answer to."""
    known = {one.rule: one.look for one in OPEN}
    wrong = [f"open: {rule} at {place}" for rule, place in left if rule not in known]
    for rule, look in known.items():
        places = [place for one, place in left if one == rule]
        wrong += look(page, places) if places else []
    return wrong


def faults(page: Page, scheme: Scheme) -> list[str]:
    """All that is wrong with the page as it stands; of another scheme only colours are looked at again."""
    page.emulate_media(color_scheme=scheme)
    wrong, left = looked(page, None if scheme == "light" else COLOURS)
    return [f"{scheme}: {one}" for one in (*wrong, *answered(page, left))]


@pytest.mark.parametrize("width", WIDTHS)
def test_nothing_stands_in_anyones_way(browser: Browser, width: int) -> None:
    """Every kind of page, in every state, light and dark."""
    found: dict[str, list[str]] = {}
    with walker(browser, plain(), width=width) as visitor:
        for kind in KINDS:
            visitor.walk_to(kind)
            visitor.page.add_style_tag(content=FLAT)
            found[kind.name] = [*faults(visitor.page, "light"), *faults(visitor.page, "dark")]
            visitor.page.emulate_media(color_scheme="light")
    assert {name: wrong for name, wrong in found.items() if wrong} == {}


def test_the_list_holds_every_kind_of_page_there_is() -> None:
    """Of both sites: no kind is built that is not walked, and none is walked that is not built."""
    known = {(kind.side, kind.page) for kind in KINDS}
    built = {
        (side, name)
        for side in {kind.side for kind in KINDS}
        for path in (plain() / side).rglob("*.html")
        for name in re.findall(r'class="page page-(\w+)"', path.read_text(encoding="utf-8"))
    }
    assert built == known


def test_a_fault_and_an_open_question_would_be_found(browser: Browser) -> None:
    """A picture without words is a fault; faint text behind something is found by our own sums."""
    with walker(browser, plain()) as visitor:
        page = visitor.go("publish/index.html")
        page.evaluate("document.querySelector('#page').innerHTML += '<img alt src=data:,><img src=data:,>'")
        assert any("image-alt" in one for one in faults(page, "light"))
        page.evaluate("document.querySelector('h1').style.color = '#bbb'")
        assert [one.partition(" has")[0] for one in too_faint(page, ["h1", ".lede"])] == ["h1"]
        assert answered(page, [("made-up-rule", "h1")]) == ["open: made-up-rule at h1"]
