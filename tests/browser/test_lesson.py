"""Practice questions in a lesson: answered on the page and told with reasons, or unfolded."""

from atexit import register
from dataclasses import replace
from functools import cache
from pathlib import Path
from shutil import rmtree
from tempfile import mkdtemp

import pytest
from playwright.sync_api import Locator, Page

from builder.assess.placed import placed_questions
from builder.doors.site import build_site
from builder.model.practice import PlacedQuestion
from builder.model.question import QUESTION_KINDS, AuthorQuestion
from builder.render.student import student_site
from tests.browser.conftest import Visit
from tests.render.asked import asked
from tests.render.samples import course

pytestmark = pytest.mark.browser
LESSON = "lessons/phases.html"
WRONG = {"value": 60, "because": "That is the pause, not the pack."}
NUMBER = {"value": 20, "unit": "minutes", "within": 5, "because": "Skin is numb by then.", "wrong": [WRONG]}
ASKED: dict[str, AuthorQuestion] = {
    **{kind: asked(kind, id=kind) for kind in QUESTION_KINDS},
    "number": asked("number", id="number", number=NUMBER),
}
COURSE = replace(
    course(),
    lessons={"phases": "# Phases\n\n" + "".join(f"[question {kind}]\n\n" for kind in ASKED)},
    questions=ASKED,
)
PLACED: dict[str, PlacedQuestion] = placed_questions(COURSE)


@cache
def built() -> Path:
    """The site with one lesson that places a question of every kind."""
    folder = Path(mkdtemp(prefix="caseloom-lesson-"))
    register(rmtree, folder, ignore_errors=True)
    build_site(student_site(COURSE, (), (), placed=PLACED), folder)
    return folder


def box(page: Page, kind: str) -> Locator:
    """The question of a kind."""
    return page.locator(".asked", has=page.locator(f"fieldset[data-kind={kind}]"))


def answer(page: Page, kind: str, value: object) -> Locator:
    """Give an answer, compare it, and hand back the question."""
    page.evaluate(
        "([kind, value]) => caseloom.kinds[kind].put("
        "document.querySelector(`fieldset[data-kind=${kind}]`), value)",
        [kind, value],
    )
    one = box(page, kind)
    one.locator(".check").click()
    return one


def given(kind: str, *, right: bool) -> object:
    """A right answer of a kind, or one that is right in part or not at all."""
    held = PLACED[kind].keyed
    first, *_, last = held.options or ("", "")
    if kind == "many":
        return sorted(held.right) if right else list(held.right[:1])
    if kind == "order":
        return list(held.right) if right else list(held.right[::-1])
    if kind == "match":
        return [list(pair) for pair in held.pairs][: None if right else 1]
    if kind == "number":
        return "20" if right else "60"
    wrong = last if first in held.right else first
    return held.right[0] if right else wrong


@pytest.mark.parametrize("kind", [kind for kind in QUESTION_KINDS if kind != "text"])
def test_an_answer_is_compared_with_what_is_right(visit: Visit, kind: str) -> None:
    """In words, with the reasons unfolded and one's own choice marked; it can be compared again."""
    page = visit(built()).go(LESSON)
    one = answer(page, kind, given(kind, right=True))
    said = "You judged as most of the panel did." if kind == "panel" else "This is right."
    assert one.locator(".outcome").inner_text() == said
    assert one.locator("details > ul").is_visible()
    assert one.locator(".yours:visible").count() >= 1
    assert "%" not in one.inner_text()
    one = answer(page, kind, given(kind, right=False))
    assert one.locator(".outcome").inner_text() not in ("", said)


def test_a_wrong_number_with_a_reason_is_told(visit: Visit) -> None:
    """The line of the number that was typed is marked, however it was typed."""
    page = visit(built()).go(LESSON)
    box(page, "number").locator("input").fill("60,0 Minutes")
    box(page, "number").locator(".check").click()
    mine = box(page, "number").locator("li", has=page.locator(".yours:visible"))
    assert "That is the pause" in mine.inner_text()


def test_words_are_compared_by_oneself(visit: Visit) -> None:
    """No script judges what is written: the example and the levels are shown beside it."""
    one = answer(visit(built()).go(LESSON), "text", "It still bleeds.")
    assert "Compare your words with the example" in one.locator(".outcome").inner_text()
    assert "Rubbing would make it bleed more." in one.locator("details").inner_text()


@pytest.mark.parametrize("kind", QUESTION_KINDS)
def test_nothing_is_told_before_an_answer(visit: Visit, kind: str) -> None:
    """What is missing is said, and the focus goes to it; a change takes back what was said."""
    page = visit(built()).go(LESSON)
    one = box(page, kind)
    one.locator(".check").click()
    assert one.locator(".problem").inner_text() == "Answer first. Then it can be compared."
    assert not one.locator("details > ul").is_visible()
    assert page.evaluate("document.activeElement.closest('fieldset').dataset.kind") == kind


def test_a_change_takes_back_what_was_said(visit: Visit) -> None:
    """The words under an answer are always about the answer as it stands."""
    page = visit(built()).go(LESSON)
    one = answer(page, "one", given("one", right=True))
    one.locator(".option").last.click()
    one.locator(".option").first.click()
    assert one.locator(".outcome").inner_text() == ""
    assert one.locator(".yours:visible").count() == 0


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_checker_finds_nothing(visit: Visit, scheme: str) -> None:
    """Neither before an answer nor with every reason unfolded."""
    visitor = visit(built(), color_scheme=scheme)
    page = visitor.go(LESSON)
    assert visitor.faults() == []
    for kind in QUESTION_KINDS:
        answer(page, kind, "So." if kind == "text" else given(kind, right=False))
    assert visitor.faults() == []


@pytest.mark.parametrize("width", [320, 1280])
def test_it_fits_its_width(visit: Visit, width: int) -> None:
    """No sideways scrolling with everything unfolded."""
    page = visit(built(), width=width).go(LESSON)
    page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })")
    assert page.evaluate("document.documentElement.scrollWidth") <= width


def test_without_a_script_it_is_read_and_unfolded(visit: Visit) -> None:
    """Every question stands there, and a click unfolds the reasons."""
    page = visit(built(), scripts=False).go(LESSON)
    assert page.locator(".asked").count() == len(QUESTION_KINDS)
    assert page.locator(".asked button:visible").count() == 0
    first = page.locator(".asked details").first
    assert not first.locator("ul").is_visible()
    first.locator("summary").click()
    assert first.locator("ul").is_visible()
