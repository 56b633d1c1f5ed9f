"""A time limit: told before, longer or none where that was agreed, and nothing lost when it is over."""

import json
from datetime import UTC, datetime
from typing import Any

import pytest
from playwright.sync_api import Page

from tests.browser.conftest import Visit
from tests.browser.test_keeping import sure
from tests.browser.test_taking import PAPER, option
from tests.browser.timed import LIMIT, timed
from tests.browser.visitor import Visitor

pytestmark = pytest.mark.browser
MINUTE = 60_000


def sitter(visit: Visit, address: str = PAPER, **more: object) -> Visitor:
    """Somebody at the timed test, on a clock of ours."""
    visitor = visit(timed(), **more)
    visitor.page.clock.install(time=datetime(2026, 11, 21, 9, tzinfo=UTC))
    visitor.go(address)
    return visitor


def sheet(page: Page) -> dict[str, Any]:
    """Finish, and read the sheet."""
    page.locator("#to-review").click()
    page.locator("#finish").click()
    read: dict[str, Any] = json.loads(page.locator("#sheet-text").input_value())
    return read


def test_the_limit_is_told_before(visit: Visit) -> None:
    """At the entry and before the first question; nothing runs until the person begins."""
    page = visit(timed()).go("tests/final.html")
    assert f"{LIMIT} minutes" in page.locator("#page").inner_text()
    page = sitter(visit).page
    assert not page.locator("#paper").is_visible()
    page.clock.run_for(50 * MINUTE)
    page.locator("#before button").click()
    assert page.locator("#time-left").inner_text() == f"Minutes left: {LIMIT}"
    assert page.evaluate("document.activeElement.tagName") == "H2"


def test_the_limit_can_be_lengthened_tenfold_or_lifted(visit: Visit) -> None:
    """WCAG 2.2, 2.2.1: before it is met it can be turned off, or adjusted to ten times its length."""
    page = sitter(visit).page
    offered = page.locator("#more option").all_inner_texts()
    assert f"{10 * LIMIT} minutes" in offered
    assert offered[-1] == "no limit"
    page.locator("#more").select_option("none")
    page.locator("#before button").click()
    page.clock.run_for(1000 * MINUTE)
    option(page, 0, 1)
    assert sheet(page)["time"] == {
        "limit": LIMIT,
        "more": "none",
        "began": "2026-11-21T09:00:00+00:00",
        "late": [],
    }


def test_what_was_agreed_comes_with_the_address(visit: Visit) -> None:
    """An instructor's link may name the factor; the person still sees and can change it."""
    page = sitter(visit, PAPER + "&more=1.5").page
    assert page.locator("#more").input_value() == "1.5"
    page.locator("#before button").click()
    assert page.locator("#time-left").inner_text() == "Minutes left: 60"


def test_what_comes_late_is_kept_and_marked(visit: Visit) -> None:
    """Over time answers are taken like before; the sheet names those that came late."""
    page = sitter(visit).page
    page.locator("#before button").click()
    option(page, 0, 1)
    page.clock.run_for(30 * MINUTE)
    assert page.locator("#time-said").inner_text().startswith("Minutes left: 10.")
    assert page.locator("#time-said").get_attribute("role") == "status"
    page.clock.run_for(11 * MINUTE)
    assert "time is over" in page.locator("#time-said").inner_text()
    option(page, 1, 2)
    made = sheet(page)
    assert [one["value"] for one in made["answers"]] == ["pack", "rub", None]
    assert made["time"]["late"] == [made["answers"][1]["q"]]


def test_the_time_goes_on_over_a_reload(visit: Visit) -> None:
    """Neither reload nor sleep stops it or begins it again."""
    visitor = sitter(visit)
    page = visitor.page
    page.locator("#before button").click()
    sure(page)
    page.clock.run_for(10 * MINUTE)
    page.reload()
    assert page.locator("#time-left").inner_text() == f"Minutes left: {LIMIT - 10}"
    assert page.locator(".where").inner_text() == f"Minutes left: {LIMIT - 10}"
    assert not page.locator("#before").is_visible()


def test_axe_finds_nothing_before_it_begins(visit: Visit) -> None:
    """The page that waits, and a running one."""
    visitor = sitter(visit)
    assert visitor.faults() == []
    visitor.page.locator("#before button").click()
    assert visitor.faults() == []


def test_without_script_the_limit_is_told(visit: Visit) -> None:
    """Read or printed, the paper says how long it may take and shows every question."""
    page = visit(timed(), scripts=False).go("tests/final-a.html")
    assert f"The limit is {LIMIT} minutes." in page.locator("#page").inner_text()
    assert page.locator(".question:visible").count() == 3
    assert not page.locator("#before").is_visible()
