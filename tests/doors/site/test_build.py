"""The door to the site generator: a plan becomes a folder that needs nothing else."""

import re
from pathlib import Path

import html5lib
import pytest

from builder.doors.site import build_site
from builder.fault import Fault
from builder.model.site import SitePage, SitePlan, SiteSection
from tests.render.sample_site import built, parsed, plan, said

PAGES = sorted(built().rglob("*.html"))


def tree_of(folder: Path) -> dict[str, bytes]:
    """Every file of a folder with its bytes."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()
    }


def small(**more: object) -> SitePlan:
    """A plan of one page."""
    page = SitePage(address="index.md", title="Start", body="[x](nowhere.md)", markdown=True)
    given = {"name": "Small", "language": "en", "pages": (page,), "assets": {}, "footer": "End.", **more}
    sections = (SiteSection(title="Start", pages=("index.md",)),)
    return SitePlan.model_validate({"sections": sections, **given})


def test_the_site_holds_what_was_planned_and_no_more() -> None:
    """Pages, assets and the search index; nothing of the theme that no page uses."""
    pages = {page.address.removesuffix(".md") + ".html" for page in plan().pages}
    assert tree_of(built()).keys() == pages | plan().assets.keys() | {"search/search_index.js"}


def test_the_same_plan_gives_the_same_bytes(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever the clock says and wherever the folder lies."""
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1000000000")
    build_site(plan(), tmp_path / "ä folder with spaces")
    assert tree_of(tmp_path / "ä folder with spaces") == tree_of(built())


@pytest.mark.parametrize("path", PAGES, ids=lambda path: path.name)
def test_no_page_names_an_outside_address(path: Path) -> None:
    """Nothing in a page leads or reaches outside."""
    assert re.findall(r"(?:src|href|action)=\"(?:https?:)?//[^\"]*", path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize("path", PAGES, ids=lambda path: path.name)
def test_every_page_is_sound_html(path: Path) -> None:
    """A strict parser finds no error."""
    html5lib.HTMLParser(strict=True).parse(path.read_text(encoding="utf-8"))


@pytest.mark.parametrize("path", PAGES, ids=lambda path: path.name)
def test_every_page_wears_the_frame(path: Path) -> None:
    """Language, a way past the bar, the way to the red flags, and the caution at the end."""
    tree = parsed(path.read_text(encoding="utf-8"))
    assert tree.html is not None
    assert tree.html["lang"] == "en"
    assert len(tree.select("a.skip[href='#page']")) == len(tree.select("#page")) == 1
    assert [said(link) for link in tree.select("header a.flags")] == ["Red flags"]
    assert plan().footer.splitlines()[0] in said(tree.select("footer")[0])


def test_the_bar_lists_the_section_one_is_in() -> None:
    """Other sections are one line each, so that a bar stays short however large the site is."""
    tree = parsed((built() / "cards" / "friction.html").read_text(encoding="utf-8"))
    assert [said(link) for link in tree.select(".panel > nav > ul > li > a")] == [
        *("Start", "Lessons", "Practice", "Red flags", "Test")
    ]
    assert [said(link) for link in tree.select(".panel ul ul a")] == [
        "Cards",
        "Cold pack",
        "Cross-fibre friction",
        "Refer",
    ]
    assert said(tree.select("[aria-current=page]")[0]) == "Cross-fibre friction"


def test_the_index_knows_no_test() -> None:
    """What is kept from search is not in the index."""
    index = (built() / "search" / "search_index.js").read_text(encoding="utf-8")
    assert "lessons/phases.html" in index
    assert "tests/final" not in index


def test_a_warning_is_a_fault(tmp_path: Path) -> None:
    """A link that leads nowhere stops the build and is named."""
    with pytest.raises(Fault, match=r"nowhere\.md"):
        build_site(small(), tmp_path / "out")


def test_a_page_says_the_language_of_its_course(tmp_path: Path) -> None:
    """Also one that the theme itself does not speak."""
    build_site(plan().model_copy(update={"language": "de-CH"}), tmp_path)
    assert '<html lang="de-CH"' in (tmp_path / "index.html").read_text(encoding="utf-8")


def test_a_site_can_go_without_search(tmp_path: Path) -> None:
    """A plan without search writes no index and shows no field."""
    build_site(plan().model_copy(update={"search": False}), tmp_path)
    assert not (tmp_path / "search").exists()
    assert 'class="find"' not in (tmp_path / "index.html").read_text(encoding="utf-8")
