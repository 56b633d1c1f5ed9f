"""A page by itself has the bytes that MkDocs gives it among all the others."""

import random
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from mkdocs.commands.build import build
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files
from mkdocs.structure.pages import Page
from mkdocs.structure.toc import TableOfContents

from builder.doors.site import OpenSite, build_site
from builder.doors.site.press import Press, listing
from builder.doors.site.press import configured as press_configured
from builder.fault import Fault
from builder.model.site import SitePage, SitePlan
from tests.render.sample_site import plan


class Planned(BasePlugin):  # type: ignore[no-untyped-call,type-arg]
    """Hands planned pages to MkDocs by its own hooks, for a whole build of its own."""

    def __init__(self, planned: SitePlan) -> None:
        """Keep the plan."""
        super().__init__()
        self.plan = planned
        self.pages = {page.address: page for page in planned.pages}

    def on_files(self, _files: Files, *, config: MkDocsConfig) -> Files:
        """Pages and assets alone."""
        sources = {page.address: page.body if page.markdown else "" for page in self.plan.pages}
        every: dict[str, Any] = sources | self.plan.assets
        return Files([File.generated(config, uri, content=text) for uri, text in every.items()])

    def on_page_markdown(self, markdown: str, *, page: Page, **_: object) -> str:
        """What the frame must know."""
        known: SitePage = self.pages[page.file.src_uri]
        page.meta.update(title=known.title, kind=known.kind, where=known.where)
        page.meta.update(scripts=known.scripts, search={"exclude": not known.search})
        return markdown

    def on_page_content(self, html: str, *, page: Page, **_: object) -> str:
        """The inside of the page."""
        known = self.pages[page.file.src_uri]
        page.toc = TableOfContents([])
        return html if known.markdown else known.body


@contextmanager
def configured(planned: SitePlan, folder: Path) -> Iterator[MkDocsConfig]:
    """MkDocs as the press sets it up, for a build into `folder/site`."""
    (folder / "scratch").mkdir()
    config = press_configured(planned, folder / "scratch")
    config["nav"] = listing(planned)
    config["site_dir"] = str(folder / "site")
    config.theme.static_templates.clear()
    config.plugins["planned"] = Planned(planned)
    config.plugins.on_startup(command="build", dirty=False)
    yield config
    config.plugins.on_shutdown()


def tree(folder: Path) -> dict[str, bytes]:
    """Every file by its name."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()
    }


def with_a_lesson() -> SitePlan:
    """The sample site with front matter, a link to another page and a table of contents in Markdown."""
    text = "---\nkey: value\ntitle: Own\n---\n# Head\n\nSee [it](../red-flags.md#x).\n\n## Part\n\n[TOC]\n"
    pages = [
        one.model_copy(update={"body": text + one.body}) if one.markdown else one for one in plan().pages
    ]
    return plan().model_copy(update={"pages": tuple(pages)})


@pytest.mark.parametrize("planned", [plan(), with_a_lesson()], ids=["sample", "lesson"])
def test_a_site_is_what_mkdocs_itself_builds(tmp_path: Path, planned: SitePlan) -> None:
    """Every page byte for byte, and the search index but for its wrapping as a script."""
    with configured(planned, tmp_path) as config:
        build(config)
    build_site(planned, tmp_path / "ours")
    theirs, ours = tree(tmp_path / "site"), tree(tmp_path / "ours")
    index = theirs.pop("search/search_index.json").decode("utf-8")
    assert ours.pop("search/search_index.js").decode("utf-8") == f"var caseloomIndex = {index};\n"
    assert ours == theirs


def test_the_order_in_which_pages_are_asked_for_changes_nothing() -> None:
    """Nor does asking twice."""
    chance = random.Random(3)  # noqa: S311 - a fixed order of pages
    with Press(with_a_lesson()) as press, Press(with_a_lesson()) as other:
        addresses = [page.address for page in with_a_lesson().pages]
        first = {at: press.page(at) for at in addresses}
        for at in chance.sample(addresses * 2, len(addresses) * 2):
            assert other.page(at) == first[at]


def test_a_press_turns_to_another_plan() -> None:
    """What it then gives is what a new press gives."""
    changed = plan().model_copy(
        update={"pages": tuple(one.model_copy(update={"title": f"{one.title} 2"}) for one in plan().pages)}
    )
    with Press(plan()) as press, Press(changed) as fresh:
        press.page("index.md")
        press.turn_to(changed)
        assert {at.address: press.page(at.address) for at in changed.pages} == {
            at.address: fresh.page(at.address) for at in changed.pages
        }


def test_an_open_site_gives_what_a_build_writes(tmp_path: Path) -> None:
    """Pages and index, before and after it turned to another plan."""
    site = OpenSite()
    assert site.page("index.md") is None
    assert site.index() == b""
    for number in range(2):
        planned = plan().model_copy(
            update={"pages": tuple(one.model_copy(update={"where": str(number)}) for one in plan().pages)}
        )
        build_site(planned, tmp_path / str(number))
        written = tree(tmp_path / str(number))
        site.turn_to(planned)
        site.turn_to(planned)
        pages = [site.page(one.address) for one in planned.pages]
        assert all(one is not None and written[one.name] == one.data for one in pages)
        assert site.index() == written["search/search_index.js"]
        assert site.page("nowhere.md") is None
    site.close()


def test_a_warning_at_one_page_is_a_fault_there() -> None:
    """A lesson that leads nowhere is named when its page is asked for."""
    bad = SitePage(address="index.md", title="Start", body="[x](nowhere.md)", markdown=True)
    site = OpenSite()
    site.turn_to(plan().model_copy(update={"pages": (bad, *plan().pages[1:])}))
    with pytest.raises(Fault, match=r"nowhere\.md"):
        site.page("index.md")
    assert site.page("red-flags.md") is not None
    site.close()


def test_a_page_that_is_not_planned_is_a_fault() -> None:
    """It is named."""
    with Press(plan()) as press, pytest.raises(Fault, match=r"nowhere\.md"):
        press.page("nowhere.md")
