"""The host's own pages: in the words of the course, with nothing inside that must be trusted."""

import re
from datetime import UTC, datetime
from pathlib import Path

import pytest

from builder.host.board import Place
from builder.host.pages import LOOK, Pages
from builder.model.arrival import Arrival
from tests.host.made import opened


def test_only_own_scripts_and_the_look_of_the_site_can_be_asked_for(tmp_path: Path) -> None:
    """No template, no step up, nothing else of the tool."""
    pages = Pages(opened(tmp_path))
    for name in ("desk.css", "desk.js", "screen.js", "assets/look.css", "assets/mark.svg"):
        found = pages.asset(f"/{name}")
        assert found is not None
        assert found.body
    for name in ("desk.html", "host.js", "../pages.py", "assets/../index.html", "", "assets/test.js"):
        assert pages.asset(f"/{name}") is None


@pytest.mark.parametrize("name", ["desk.html", "screen.html", "closed.html"])
def test_no_page_holds_style_or_script_inside(name: str) -> None:
    """So that the strictest rule for them holds; and no word of the interface stands in a template."""
    text = (LOOK / name).read_text(encoding="utf-8")
    assert not re.search(r"<style|\sstyle=|\son[a-z]+=|javascript:", text)
    assert all("src=" in tag or "application/json" in tag for tag in re.findall(r"<script[^>]*>", text))
    bare = re.sub(r"\{\{.*?\}\}|\{%.*?%\}|<[^>]*>|[–\s]", "", text)
    assert bare == ""


def test_where_someone_stands_is_said_in_words(tmp_path: Path) -> None:
    """With how many are answered, the receipts, and that a phone fell silent."""
    pages = Pages(opened(tmp_path))
    eight = datetime(2026, 4, 19, 8, 0, tzinfo=UTC)
    arrival = Arrival(digest="a", at=eight, receipt="7K3-M9Q", test="final", version="A")
    assert pages.row(Place("Ann", "missing"))["text"] == "not seen yet"
    assert pages.row(Place("Ann", "working", 3, 10))["text"] == "3 of 10 answered"
    quiet = pages.row(Place("Ann", "working", 3, 10, quiet=True))
    assert quiet["text"] == "3 of 10 answered, not heard of for a while"
    row = pages.row(Place("Ann", "handed", 10, 10, quiet=True, sheets=(arrival,)))
    assert (row["text"], row["receipts"]) == ("handed in", ["final A · 08:00 · 7K3-M9Q"])


def test_a_name_stays_a_name(tmp_path: Path) -> None:
    """Whatever a roster holds, the data of the page ends where it should."""
    page = Pages(opened(tmp_path)).desk({"people": [{"name": "</script><b>"}]}).body
    assert b"</script><b>" not in page
    assert b"\\u003c/script>" in page
