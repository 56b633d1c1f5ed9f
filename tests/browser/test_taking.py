"""Taking a test: answers stay, are looked over, and become an answer sheet that the tool can read."""

import json
import zlib
from pathlib import Path

import pytest
from playwright.sync_api import Page

from builder.model.answers import AnswerSheet, flat
from tests.browser.codes import code_for
from tests.browser.conftest import Visit
from tests.browser.visitor import Visitor

pytestmark = pytest.mark.browser
CODE = code_for("A")
PAPER = f"tests/final-a.html#code={CODE}&class=spring"
BLOCKED = """
Storage.prototype.setItem = function () { throw new Error('blocked'); };
IDBFactory.prototype.open = function () { throw new Error('blocked'); };
"""


def option(page: Page, question: int, number: int) -> None:
    """Choose an option by its place."""
    page.locator(".question").nth(question).locator(".option").nth(number).click()


def chosen(page: Page) -> list[str]:
    """The values that are ticked."""
    values: list[str] = page.evaluate("[...document.querySelectorAll('input:checked')].map(one => one.value)")
    return values


def sheet_of(page: Page, folder: Path) -> AnswerSheet:
    """Finish, save the sheet as a participant would, and read it back."""
    page.locator("#to-review").click()
    page.locator("#finish").click()
    with page.expect_download() as waiting:
        page.locator("#sheet-file").click()
    saved = folder / waiting.value.suggested_filename
    waiting.value.save_as(saved)
    text = saved.read_text(encoding="utf-8")
    assert page.locator("#sheet-text").input_value() == text
    return AnswerSheet.model_validate_json(text)


@pytest.mark.parametrize("place", ["folder", "server"])
def test_the_sheet_can_be_read_back(visit: Visit, served: str, tmp_path: Path, place: str) -> None:
    """Shape, answers in the order of the paper, many sorted, nothing as null, and the checksum."""
    visitor = visit(served if place == "server" else None, timezone_id="America/New_York")
    page = visitor.go(PAPER)
    option(page, 0, 1)
    option(page, 2, 2)
    option(page, 2, 0)
    sheet = sheet_of(page, tmp_path)
    assert [(one.q, one.kind, one.value) for one in sheet.answers] == [
        ("qa1f", "one", "pack"),
        ("qa2f", "one", None),
        ("qa3f", "many", ("glide", "rub")),
    ]
    assert (sheet.edition, sheet.test, sheet.version, sheet.code) == ("k7q2m9xa", "final", "A", CODE)
    assert (sheet.klass, sheet.rev, sheet.zone) == ("spring", 1, "America/New_York")
    assert sheet.finished is not None
    assert sheet.finished >= sheet.started
    written = flat(sheet.edition, sheet.test, sheet.version, sheet.code, sheet.answers)
    assert sheet.crc32 == f"{zlib.crc32(written.encode('utf-8')):08x}"
    assert (tmp_path / f"final-A-{CODE}.json").exists()


@pytest.mark.parametrize("place", ["folder", "server"])
def test_answers_survive_a_reload(visit: Visit, served: str, place: str) -> None:
    """Kept at every change, also without the network, and also when the page is opened anew."""
    visitor = visit(served if place == "server" else None)
    page = visitor.go(PAPER)
    option(page, 0, 1)
    option(page, 2, 0)
    option(page, 2, 2)
    page.reload()
    assert chosen(page) == ["pack", "glide", "rub"]
    page.close()
    again = visitor.context.new_page()
    again.goto(visitor.root + PAPER)
    assert chosen(again) == ["pack", "glide", "rub"]
    assert again.locator(".keeping").inner_text() == "Your answers are kept on this device."


def test_no_network_is_no_hindrance(visit: Visit, served: str, tmp_path: Path) -> None:
    """Once the page is there everything goes on without a server, up to the sheet."""
    visitor = visit(served)
    page = visitor.go(PAPER)
    page.wait_for_load_state("networkidle")  # the mark of the site is asked for last
    visitor.context.set_offline(offline=True)
    option(page, 0, 1)
    page.wait_for_selector(".keeping:not(:empty)")
    assert sheet_of(page, tmp_path).answers[0].value == "pack"


def test_each_code_has_answers_of_its_own(visit: Visit) -> None:
    """Two participants at one device do not see each other's answers."""
    visitor = visit()
    option(visitor.go(PAPER), 0, 1)
    other = code_for("A", "4G9K2MX")
    page = visitor.go("index.html")
    page = visitor.go(f"tests/final-a.html#code={other}")
    assert chosen(page) == []
    names: list[str] = page.evaluate("Object.keys(localStorage)")
    assert sorted(names) == sorted(f"caseloom/k7q2m9xa/final/A/{code}" for code in (CODE, other))


def test_a_later_sheet_counts_up(visit: Visit, tmp_path: Path) -> None:
    """A changed answer takes the sheet away; the next has the same number and a higher revision."""
    page = visit().go(PAPER)
    option(page, 0, 0)
    first = sheet_of(page, tmp_path)
    option(page, 0, 1)
    assert not page.locator("#handing").is_visible()
    page.reload()
    second = sheet_of(page, tmp_path)
    assert (second.sheet, second.rev) == (first.sheet, first.rev + 1)
    assert second.started == first.started
    assert second.answers[0].value == "pack"


def test_the_review_names_what_is_open(visit: Visit) -> None:
    """Which questions have no answer, each leading back; and it follows later changes."""
    page = visit().go(PAPER)
    option(page, 1, 0)
    page.locator("#to-review").click()
    assert page.locator("#review-state").inner_text() == "Without an answer: question 1, 3."
    assert not page.locator("#handing").is_visible()
    page.locator(".answered a").first.click()
    assert page.evaluate("document.activeElement.id") == "qa1f-n"
    option(page, 0, 0)
    option(page, 2, 0)
    assert page.locator("#review-state").inner_text() == "Every question has an answer."
    assert page.locator(".answered .open").count() == 0


def test_blocked_storage_is_said(visit: Visit, tmp_path: Path) -> None:
    """Where the browser keeps nothing the page says so, and the sheet can still be made."""
    visitor = visit()
    visitor.context.add_init_script(BLOCKED)
    page = visitor.go(PAPER)
    option(page, 0, 1)
    assert "does not keep your answers" in page.locator(".keeping").inner_text()
    assert sheet_of(page, tmp_path).answers[0].value == "pack"


@pytest.mark.parametrize("kept", ["not json", "{}", "null", '{"answers": {"qa1f": ["odd", 7]}}'])
def test_damaged_keepings_do_no_harm(visit: Visit, tmp_path: Path, kept: str) -> None:
    """What another program or a torn write left behind never stops a participant."""
    visitor = visit()
    visitor.go("index.html")
    name = f"caseloom/k7q2m9xa/final/A/{CODE}"
    visitor.page.evaluate("([name, kept]) => localStorage.setItem(name, kept)", [name, kept])
    page = visitor.go(PAPER)
    option(page, 0, 1)
    assert sheet_of(page, tmp_path).answers[0].value == "pack"


def test_the_sheet_as_text_can_be_copied(visit: Visit) -> None:
    """Copying says that it was done."""
    visitor = visit()
    page = visitor.go(PAPER)
    page.locator("#to-review").click()
    page.locator("#finish").click()
    page.locator("#sheet-copy").click()
    page.wait_for_function("document.getElementById('sheet-said').textContent")
    assert json.loads(page.locator("#sheet-text").input_value())["format"] == "caseloom/answers/1"


def test_a_whole_test_by_keyboard(visit: Visit) -> None:
    """From the code to the answer sheet without a pointer."""
    visitor: Visitor = visit()
    page = visitor.go("tests/final.html")
    visitor.tab_to("#code")
    page.keyboard.type(CODE)
    page.keyboard.press("Enter")
    page.wait_for_url("**/final-a.html#code=*")
    for question in ("qa1f", "qa2f", "qa3f"):
        visitor.tab_to(f"input[name={question}]")
        page.keyboard.press("Space")
    visitor.tab_to("#to-review")
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.id") == "review-title"
    visitor.tab_to("#finish")
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.id") == "handing-title"
    visitor.tab_to("#sheet-file")
    assert page.locator("#review-state").inner_text() == "Every question has an answer."


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_at_the_end(visit: Visit, scheme: str) -> None:
    """Review and answer sheet have no fault either."""
    visitor = visit(color_scheme=scheme)
    page = visitor.go(PAPER)
    page.locator("#to-review").click()
    page.locator("#finish").click()
    page.locator("#handing summary").click()
    assert visitor.faults() == []


def test_without_script_a_test_can_be_read(visit: Visit) -> None:
    """Every question is there to be read and printed; nothing is offered that would not work."""
    page = visit(scripts=False).go("tests/final-a.html")
    assert page.locator(".question:visible").count() == 3
    assert page.locator("button:visible").count() == 0
