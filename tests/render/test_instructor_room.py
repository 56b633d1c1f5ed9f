"""A case for the room: every step there, no answer to be seen until it is asked for."""

from collections.abc import Iterator
from typing import Literal

import pytest
from playwright.sync_api import Browser, Page

from builder.render.instructor_room import room_page, said_of
from builder.render.maker import maker
from builder.render.student_case import timed
from tests.axe import violations
from tests.render.sample_cases import practice_case
from tests.render.sample_instructor import built_private, private_page
from tests.render.sample_judged import judged_course
from tests.render.sample_site import parsed, said

CASE = practice_case()
ROOM = parsed(room_page(maker(judged_course()), CASE).body)
ASKED = [asked for visit in CASE.visits for asked in visit.questions]


def test_every_step_has_its_place() -> None:
    """What happened, then for each visit what is known, each question, and what came next, in order."""
    titles = [said(node) for node in ROOM.select("h1, .beat h2")]
    expected = [CASE.title]
    for visit in CASE.visits:
        expected += [visit.scene.title, *(asked.question.stem for asked in visit.questions)]
        expected += ["What happened next"] if visit.next else []
    assert titles == expected


def test_options_carry_letters_and_a_place_for_hands() -> None:
    """In the order of the question, each with its own field, which says whose hands it counts."""
    for section, asked in zip(ROOM.select(".asked"), ASKED, strict=True):
        letters = [str(node["data-letter"]) for node in section.select(".choice")]
        assert letters == list("ABCDEFGH"[: len(asked.question.options)])
        assert [said(node) for node in section.select(".hands > span")] == [
            f"Hands {letter}" for letter in letters
        ]


def test_what_is_said_stands_beside_its_option() -> None:
    """Each option has its own word and reason, and what is right is marked."""
    for section, asked in zip(ROOM.select(".asked"), ASKED, strict=True):
        told = said_of(asked)
        for node, option in zip(section.select(".choice"), asked.question.options, strict=True):
            assert told[option.id].reason in said(node)
            assert ("right" in str(node["class"])) is (option.id in asked.right)


def test_the_timeline_waits_for_the_phase() -> None:
    """It stands folded below the question after which a participant sees it, and below no other."""
    after = {timed(visit) for visit in CASE.visits}
    for section, asked in zip(ROOM.select(".asked"), ASKED, strict=True):
        assert bool(section.select("figure.after")) is (asked.question.id in after)


@pytest.mark.parametrize("signed", [True, False])
def test_it_says_whether_all_it_shows_is_reviewed(*, signed: bool) -> None:
    """A visit rests on more than its questions, so that is what counts."""
    visits = tuple(one.model_copy(update={"reviewed": signed}) for one in CASE.visits)
    body = room_page(maker(judged_course()), CASE.model_copy(update={"visits": visits})).body
    assert bool(parsed(body).select(".unreviewed")) is not signed


def test_the_room_is_not_told_to_look_away() -> None:
    """The banner of the instructor's side stands on every other page."""
    assert "show it to no participant" not in said(ROOM)
    assert "show it to no participant" in said(private_page("index.md"))


@pytest.fixture
def shown(browser: Browser) -> Iterator[Page]:
    """The page in a browser, on a projector."""
    page = browser.new_context(viewport={"width": 1366, "height": 768}).new_page()
    page.goto((built_private() / "room" / f"{CASE.id.replace('_', '-')}.html").as_uri())
    yield page
    page.context.close()


def now(page: Page) -> str:
    """The heading of the step that is shown."""
    return page.locator(".beat.here h2, .opening.here .lede").inner_text()


@pytest.mark.browser
def test_a_clicker_goes_through_it_and_reveals(shown: Page) -> None:
    """Page Down moves on, and on a question first shows the answer; Page Up takes both back."""
    assert now(shown) == CASE.mechanism
    shown.keyboard.press("PageDown")
    shown.keyboard.press("PageDown")
    stem = now(shown)
    assert stem == ASKED[0].question.stem
    assert not shown.locator(".beat.here .said").first.is_visible()
    shown.keyboard.press("PageDown")
    assert now(shown) == stem
    assert shown.locator(".beat.here .said").first.is_visible()
    shown.keyboard.press("PageUp")
    assert not shown.locator(".beat.here .said").first.is_visible()
    assert shown.locator(".beat:visible").count() == 1


@pytest.mark.browser
def test_a_letter_counts_one_hand(shown: Page) -> None:
    """With Shift one less; a count typed in counts too; switched off, a letter does nothing."""
    shown.keyboard.press("PageDown")
    shown.keyboard.press("PageDown")
    for key in ("a", "a", "b", "Shift+B", "a"):
        shown.keyboard.press(key)
    inputs = shown.locator(".beat.here .hands input")
    assert [inputs.nth(0).input_value(), inputs.nth(1).input_value()] == ["3", ""]
    inputs.nth(1).fill("5x")
    assert shown.locator(".beat.here .total").inner_text() == "Hands counted: 8"
    shown.locator(".letters").click()
    shown.keyboard.press("a")
    assert inputs.nth(0).input_value() == "3"


@pytest.mark.browser
def test_a_reload_stays_where_it_was(shown: Page) -> None:
    """The place is in the address; the end cannot be passed."""
    for _ in range(60):
        shown.keyboard.press("ArrowRight")
    last = now(shown)
    shown.reload()
    assert now(shown) == last
    shown.keyboard.press("ArrowRight")
    assert now(shown) == last


@pytest.mark.browser
@pytest.mark.parametrize(("width", "scheme"), [(390, "light"), (1366, "light"), (1366, "dark")])
def test_every_step_is_readable_by_all(
    browser: Browser, width: int, scheme: Literal["light", "dark"]
) -> None:
    """No step, closed or open, has a fault that the checker finds, or is wider than the screen."""
    page = browser.new_context(viewport={"width": width, "height": 768}, color_scheme=scheme).new_page()
    page.goto((built_private() / "room" / f"{CASE.id.replace('_', '-')}.html").as_uri())
    for _ in range(2 * len(ASKED) + 2 * len(CASE.visits)):
        assert violations(page) == []
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        page.keyboard.press("ArrowRight")
    page.context.close()
