"""Typing in from paper, in a browser, by keyboard: the sheet is the one that the site would hand over."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path
from tempfile import mkdtemp
from typing import Any

import pytest
from playwright.sync_api import Page

from builder.doors.site import build_site
from builder.model.answers import AnswerSheet, Given, flat
from builder.model.site import SiteSection
from builder.render import address
from builder.render.instructor_mark import marked
from builder.render.instructor_paper import paper_pages
from builder.render.instructor_start import start_page
from builder.render.maker import maker, site_plan
from builder.render.student_flags import flags_page
from tests.axe import violations
from tests.browser.codes import code_for
from tests.browser.conftest import Visit
from tests.render.sample_judged import judged_course
from tests.render.sample_papers import every_kind

pytestmark = pytest.mark.browser
CODE = code_for("A")
TYPED = ["b", "d a", "CAB", "1c 2-", "7,5", "A", "It still bleeds."]
VALUES: list[Any] = [
    "ohea",
    ["oloo", "opad"],
    ["othi", "ofir", "osec"],
    [["oacu", "onot"]],
    "7.5",
    "owai",
    TYPED[6],
]


@cache
def built() -> Path:
    """The paper pages of a test with every kind, built into a folder."""
    made, folder = maker(judged_course()), Path(mkdtemp(prefix="caseloom-paper-"))
    pages = [start_page(made, []), *paper_pages(made, every_kind()), flags_page(made)]
    section = SiteSection(title="Paper", pages=("paper/final.md",))
    build_site(marked(made, site_plan(made, pages, [section], address.FLAGS)), folder)
    return folder


def begun(visit: Visit, code: str = CODE, **more: object) -> Page:
    """The page with a sheet begun."""
    page = visit(built(), **more).go("paper/final.html#class=spring")
    page.keyboard.press("Tab")
    page.locator("#code").fill(code)
    page.keyboard.press("Enter")
    return page


def type_all(page: Page, *typed: str) -> None:
    """Type one line after another, each ended by Enter, the written answer by leaving its field."""
    for line in typed[:-1]:
        page.keyboard.type(line)
        page.keyboard.press("Enter")
    page.keyboard.type(typed[-1])


def test_what_is_typed_twice_is_a_sheet_as_the_site_hands_it_over(visit: Visit) -> None:
    """Every kind by its letters, in any case, with or without spaces; the checksum is the tool's own."""
    page = begun(visit)
    type_all(page, *TYPED)
    page.locator("#typing-on").click()
    assert "once more" in page.locator("#typing-title").inner_text()
    type_all(page, *(one.upper() if one != TYPED[6] else one for one in TYPED))
    with page.expect_download() as waited:
        page.locator("#typing-on").click()
    assert waited.value.suggested_filename == f"final-A-{CODE}.json"
    sheet = AnswerSheet.model_validate(json.loads(Path(waited.value.path()).read_text(encoding="utf-8")))
    assert [one.value for one in sheet.answers] == [frozen(value) for value in VALUES]
    assert (sheet.klass, sheet.code, sheet.version, sheet.edition) == ("spring", CODE, "A", "k7q2m9xa")
    expected = flat(sheet.edition, sheet.test, sheet.version, sheet.code, sheet.answers)
    assert page.evaluate("text => caseloom.crc32(text)", expected) == sheet.crc32
    assert page.locator("#code").evaluate("one => one === document.activeElement")


def frozen(value: object) -> object:
    """A value as an answer sheet holds it."""
    return Given.model_validate({"q": "q", "kind": "one", "value": value}).value


def test_what_differs_is_shown_before_it_is_saved(visit: Visit) -> None:
    """The line typed otherwise tells what it was; only a further press saves."""
    page = begun(visit)
    type_all(page, *TYPED)
    page.locator("#typing-on").click()
    type_all(page, "c", *TYPED[1:])
    page.locator("#typing-on").click()
    assert page.locator(".row.differs").count() == 1
    assert "first time: b" in page.locator(".row.differs .problem").inner_text()
    assert page.locator(".row.differs .field").evaluate("one => one === document.activeElement")
    with page.expect_download() as waited:
        page.locator("#typing-on").click()
    sheet = json.loads(Path(waited.value.path()).read_text(encoding="utf-8"))
    assert sheet["answers"][0]["value"] == "ores"


@pytest.mark.parametrize(
    ("line", "typed"), [(0, "E"), (0, "AB"), (1, "AA"), (2, "AB"), (2, "ABA"), (3, "C"), (3, "DD")]
)
def test_what_is_none_of_the_letters_is_told(visit: Visit, line: int, typed: str) -> None:
    """A letter too many, too few, twice, or of no option keeps the focus until it is mended."""
    page = begun(visit)
    page.locator('[data-version="A"] .field').nth(line).fill(typed)
    page.locator("#typing-on").click()
    row = page.locator('[data-version="A"] .row').nth(line)
    assert "none of the letters" in row.locator(".problem").inner_text()
    assert "once more" not in page.locator("#typing-title").inner_text()


def test_nothing_and_a_dash_are_left_out(visit: Visit) -> None:
    """A sheet that was handed in empty is a sheet with no answers."""
    page = begun(visit)
    type_all(page, "-", "", "", "", "", "", "")
    page.locator("#typing-on").click()
    type_all(page, "", "-", "", "", "", "", "")
    with page.expect_download() as waited:
        page.locator("#typing-on").click()
    sheet = json.loads(Path(waited.value.path()).read_text(encoding="utf-8"))
    assert {json.dumps(one["value"]) for one in sheet["answers"]} == {"null"}


def test_what_was_typed_is_there_after_a_reload(visit: Visit) -> None:
    """A page closed in the middle goes on where it was, in the same look."""
    page = begun(visit)
    type_all(page, *TYPED[:3])
    page.reload()
    page.locator("#code").fill(CODE)
    page.keyboard.press("Enter")
    assert page.locator('[data-version="A"] .field').nth(1).input_value() == TYPED[1]


def test_a_wrong_code_is_told(visit: Visit) -> None:
    """A mistyped character never opens another person's version."""
    page = begun(visit, CODE[:-1] + ("2" if CODE[-1] != "2" else "3"))
    assert page.locator("#code-problem").inner_text() != ""
    assert page.locator("#typing").is_hidden()


@pytest.mark.parametrize(("width", "scheme"), [(390, "light"), (1280, "dark")])
def test_nothing_stands_in_anyones_way(visit: Visit, width: int, scheme: str) -> None:
    """The checker finds nothing, before and while typing, and no page is wider than the screen."""
    page = begun(visit, width=width, color_scheme=scheme)
    visitor = page.context
    for name in (
        "paper/final.html",
        "paper/final-a.html",
        "paper/final-a-large.html",
        "paper/final-a-answers.html",
    ):
        other = visitor.new_page()
        other.goto((built() / name).as_uri())
        assert other.evaluate("document.documentElement.scrollWidth") <= width, name
        assert violations(other) == []
    assert violations(page) == []
