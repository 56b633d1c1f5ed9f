"""After the course, in a browser: the four days, a calendar file, and what one writes for oneself."""

import json
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from playwright.sync_api import Page

from builder.doors.calendar import calendar_days, calendar_file
from builder.doors.site import build_site
from builder.model.after import INTERVALS, SpacedSet
from builder.render.maker import maker
from builder.render.student import student_site
from builder.render.student_after import reminders
from tests.browser.conftest import Visit
from tests.model.test_after import GOLDEN
from tests.render.sample_cases import practice_case
from tests.render.samples import course

pytestmark = pytest.mark.browser
SETS = tuple(SpacedSet(interval, ("landing",), ()) for interval in INTERVALS)
TITLE = "Soft tissue; by phase, ä\u00adnd \\ so on – " + "a long title " * 9
BLOCKED = "Storage.prototype.setItem = () => { throw new Error('full'); };"


@pytest.fixture(scope="module")
def site() -> Iterator[Path]:
    """A course with its pages for the time after, its title as awkward as a title may be."""
    with TemporaryDirectory() as folder:
        plan = student_site(course(lessons=[], title=TITLE), (practice_case(),), (), spaced=SETS)
        build_site(plan, Path(folder))
        yield Path(folder)


def calendar(page: Page) -> bytes:
    """The calendar file that the page gives."""
    with page.expect_download() as waiting:
        page.locator(".ended button").click()
    return waiting.value.path().read_bytes()


def dates(page: Page) -> list[str]:
    """The four days as they are told."""
    return [text.strip() for text in page.locator(".due [data-due]").all_inner_texts()]


def test_days_are_counted_as_the_tool_counts_them(visit: Visit, site: Path) -> None:
    """The same rows that the tool's own tests read."""
    page = visit(site).go("after/index.html")
    count = """([last, spans]) => Object.fromEntries(spans.map(([id, days, months]) =>
        [id, caseloom.dayAfter(new Date(last), days, months).toISOString().slice(0, 10)]))"""
    spans = [[one.id, one.days, one.months] for one in INTERVALS]
    for row in GOLDEN["days"]:
        assert {"last": row["last"], **page.evaluate(count, [row["last"], spans])} == row


def test_the_calendar_file_is_the_tools_own(visit: Visit, site: Path) -> None:
    """The same days, names and words as a class gets; each line by the standard, whatever the title is."""
    page = visit(site, accept_downloads=True).go("after/index.html")
    page.locator("#ended").fill("2026-01-31")
    data = calendar(page)
    expected = reminders(maker(course(lessons=[], title=TITLE)), date(2026, 1, 31))
    assert calendar_days(data) == list(expected)
    assert max(map(len, data.split(b"\r\n"))) <= 75
    assert b"\n" not in data.replace(b"\r\n", b"")
    ours = calendar_file(expected).replace(b"\r\n ", b"").split(b"\r\n")
    assert sorted(data.replace(b"\r\n ", b"").split(b"\r\n")) == sorted(ours)
    assert "Saved." in page.locator(".ended .saved").inner_text()


def test_a_day_is_asked_for_kept_and_shown_again(visit: Visit, site: Path) -> None:
    """Without one the page says so and takes the focus there; with one every page tells its own day."""
    guest = visit(site)
    page = guest.go("after/index.html")
    assert dates(page)[0] == "the day after your last day"
    page.locator(".ended button").click()
    assert page.locator("#ended-problem").inner_text() == "Choose the last day of your course first."
    assert page.evaluate("document.activeElement.id") == "ended"
    page.locator("#ended").fill("2026-04-19")
    assert page.locator("#ended-problem").inner_text() == ""
    assert dates(page)[0] == "Monday, April 20, 2026"
    assert guest.faults() == []
    assert "April 26, 2026" in guest.go("after/one-week.html").locator("p[data-due]").inner_text()


@pytest.mark.parametrize(("mark", "told"), [("2026-04-19", "2026-04-19"), ("2026-02-31", ""), ("x", "")])
def test_the_last_day_may_come_with_the_link(mark: str, told: str, visit: Visit, site: Path) -> None:
    """An instructor sends it to a class; what is no day is passed over."""
    page = visit(site).go(f"after/index.html#ended={mark}")
    assert page.locator("#ended").input_value() == told


def test_changes_are_kept_and_shown_on_the_days(visit: Visit, site: Path) -> None:
    """Typed text is shown as text; what is cleared is gone from the device."""
    guest = visit(site)
    page = guest.go("after/my-changes.html")
    page.locator("#change1_what").fill("Ask first <b>always</b>")
    page.locator("#change1_when").fill("Monday")
    page.locator("#change3_what").fill("Ten minutes of cold")
    page = guest.go("after/three-months.html")
    lines = page.locator(".kept-changes li").all_inner_texts()
    assert lines == ["Ask first <b>always</b>\nBy when: Monday", "Ten minutes of cold"]
    assert not page.locator(".none-kept").is_visible()
    assert guest.faults() == []
    page = guest.go("after/my-changes.html")
    assert page.locator("#change1_what").input_value() == "Ask first <b>always</b>"
    page.locator(".clear .first").press("Enter")
    page.locator(".clear .sure").press("Enter")
    assert page.locator("#change1_what").input_value() == ""
    assert page.evaluate("localStorage.length") == 0
    assert "Cleared." in page.locator(".clear [role=status]").inner_text()
    assert guest.go("after/one-day.html").locator(".none-kept").is_visible()


def test_two_windows_take_nothing_from_each_other(visit: Visit, site: Path) -> None:
    """Each field is written by itself onto what is there."""
    guest = visit(site)
    page = guest.go("after/my-changes.html")
    other = guest.context.new_page()
    other.goto(f"{guest.root}after/my-sheet.html")
    page.locator("#change1_what").fill("Ask first")
    other.locator("#sheet_use").fill("In the clinic wagon")
    other.locator(".learned input").first.check()
    page.locator("#change2_what").fill("Look again")
    kept = json.loads(page.evaluate("Object.values(localStorage)[0]"))
    assert sorted(kept) == ["change1_what", "change2_what", "sheet_learned_phases", "sheet_use"]


@pytest.mark.parametrize("planted", ["{", "[]", "7", '{"change1_what": 7}', "null"])
def test_what_is_kept_may_be_anything(planted: str, visit: Visit, site: Path) -> None:
    """A damaged store is an empty one."""
    guest = visit(site)
    page = guest.go("after/my-changes.html")
    page.evaluate("text => localStorage.setItem(document.querySelector('.mine').dataset.kept, text)", planted)
    assert guest.go("after/my-changes.html").locator("#change1_what").input_value() == ""


def test_a_device_that_keeps_nothing_says_so(visit: Visit, site: Path) -> None:
    """As soon as something is typed; the page can still be printed."""
    guest = visit(site)
    guest.context.add_init_script(BLOCKED)
    page = guest.go("after/my-sheet.html")
    page.locator("#sheet_name").fill("Bea")
    assert page.locator(".clear [role=status]").inner_text() == (
        "This device keeps nothing. Print the page before you leave it."
    )


@pytest.mark.parametrize("paper", ["A4", "Letter"])
@pytest.mark.parametrize("address", ["after/my-changes.html", "after/my-sheet.html"])
def test_each_prints_on_one_sheet(address: str, paper: str, visit: Visit, site: Path) -> None:
    """Blank to be filled by hand, and filled; buttons are left out."""
    page = visit(site, width=1280).go(address)
    for text in ("", "Ask about white fingers before any cold, and write the answer down. " * 3):
        for field in page.locator("textarea").all():
            field.fill(text)
        sheets = page.pdf(format=paper).count(b"/Type /Page\n")
        assert sheets == 1
    page.emulate_media(media="print")
    assert page.locator("button:visible").count() == 0


def test_without_scripts_everything_is_there_to_read(visit: Visit, site: Path) -> None:
    """The days are told in words, and no field for a date stands there that nothing would read."""
    page = visit(site, scripts=False).go("after/index.html")
    assert page.locator(".without").is_visible()
    assert not page.locator(".ended").is_visible()
    assert dates(page)[2] == "the same day of the next month"
