"""The handbook says all that there is: every command it is given, every sort of file, every check."""

from functools import cache
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from builder.flow.kinds import KINDS
from builder.flow.manual import manual_plan, write_manual
from builder.model.manual import ManualCommand
from builder.model.site import SitePlan
from builder.read.editor.kinds import KINDS as FILES
from builder.render.manual import of_check, of_file
from tests.axe import violations
from tests.render.sample_site import parsed, said

ONE = (ManualCommand("check", "Say what is to fix.", "caseloom check COURSE", "Says it.", ()),)


@cache
def plan() -> SitePlan:
    """The handbook, planned once."""
    return manual_plan(ONE)


def body(address: str) -> str:
    """All that one page says."""
    return said(parsed(next(page.body for page in plan().pages if page.address == address)))


def test_every_check_has_its_page() -> None:
    """Each name that can be printed, with its reason; none is left out and none is invented."""
    pages = {page.address for page in plan().pages if page.address.startswith("checks/")}
    assert pages == {of_check(name) for name in KINDS} | {"checks/index.md"}
    for name, kind in KINDS.items():
        assert " ".join(kind.why.split()) in body(of_check(name))


def test_every_sort_of_file_has_its_fields() -> None:
    """Those at the top and those inside, each with its words."""
    assert {of_file(name) for name in FILES} <= {page.address for page in plan().pages}
    text = body(of_file("case"))
    for field in ("client.age", "tissue.region", "visits.since_injury", "visits.chosen.card"):
        assert field in text


@pytest.mark.browser
def test_it_opens_from_its_folder_and_stands_in_nobodys_way(browser: Browser, tmp_path: Path) -> None:
    """A page of each sort, on a phone and on a desk, asks for nothing outside and has no fault."""
    start = write_manual(ONE, tmp_path / "manual")
    for width in (390, 1280):
        page = browser.new_context(viewport={"width": width, "height": 844}).new_page()
        asked: list[str] = []
        page.on("request", lambda one: asked.append(one.url))  # noqa: B023 - each page has its own list
        for name in ("index", "commands", "files/case", "checks/index", "checks/agenda-gap"):
            page.goto((start.parent / f"{name}.html").as_uri())
            assert violations(page) == []
            assert page.evaluate("document.documentElement.scrollWidth") <= width
        assert all(url.startswith("file:") for url in asked)
        page.context.close()
