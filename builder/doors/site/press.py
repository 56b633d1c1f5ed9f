"""One planned site ready to press: any page of it by itself, as MkDocs builds it among all the others."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any, Self

from mkdocs.commands.build import get_context
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files
from mkdocs.structure.nav import get_navigation
from mkdocs.structure.pages import Page
from mkdocs.structure.toc import TableOfContents

from builder.disk import write_text
from builder.doors.site.entries import entries
from builder.fault import Fault
from builder.model.site import SitePage, SitePlan
from builder.model.words import marked, unmarked

EXTENSIONS = ("abbr", "admonition", "attr_list", "def_list", "footnotes", "md_in_html", "tables", "toc")
SEARCH = "material/search"
FOR_SEARCH = re.compile(r"\s?data-search-\w+=\"[^\"]+\"")  # as Material takes them out


@dataclass(frozen=True)
class Pressed:
    """One page as it is published: its name in the folder, its bytes, and its entries for search as JSON."""

    name: str
    data: bytes
    entries: tuple[str, ...]


class Press:
    """The generator made ready for one plan; `turn_to` another plan that differs in its pages alone."""

    def __init__(self, plan: SitePlan) -> None:
        self._scratch = TemporaryDirectory()
        try:
            self._config = configured(plan, Path(self._scratch.name))
            self._config.plugins.on_startup(command="build", dirty=False)
            self._config = self._config.plugins.on_config(self._config)
            self._main = self._config.theme.get_env().get_template("main.html")
            self.turn_to(plan)
        except BaseException:
            self._scratch.cleanup()
            raise

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def close(self) -> None:
        """Let go of what lies on disk."""
        self._config.plugins.on_shutdown()
        self._scratch.cleanup()

    def turn_to(self, plan: SitePlan) -> None:
        """Take a plan with other pages or sections; all around the pages must be the same."""
        self._planned = {page.address: page for page in plan.pages}
        files = [
            File.generated(self._config, page.address, content=page.body if page.markdown else "")
            for page in plan.pages
        ]
        assets = [File.generated(self._config, name, content=data) for name, data in plan.assets.items()]
        media = [File.generated(self._config, name, content=b"") for name in plan.media]
        self._files = Files([*files, *assets, *media])
        self._config["nav"] = listing(plan)
        self._nav = get_navigation(self._files, self._config)
        self._pages = self._files.documentation_pages()
        for file in self._pages:
            self._name(file)

    def page(self, address: str) -> Pressed:
        """One page, made new: the same bytes whichever pages were made before it."""
        file, planned = self._file(address), self._planned[address]
        page = self._filled(file, planned)
        page.active = True
        try:
            context = get_context(self._nav, self._pages, self._config, page)
            made = self._searched(page, planned)
            output = marked(self._main.render(context))
        finally:
            page.active = False
        return Pressed(file.dest_uri, output.encode("utf-8", errors="xmlcharrefreplace"), made)

    def index(self, found: Iterable[str]) -> bytes:
        """The search index as a script, since a page opened from a folder can read nothing else."""
        empty = self._index().generate_search_index(None)
        written = empty.removesuffix("]}") + ",".join(found) + "]}"
        return f"var caseloomIndex = {written};\n".encode()

    def _file(self, address: str) -> File:
        file = self._files.get_file_from_path(address)
        if file is None:
            raise Fault(f"The site has no page {address}.", "Build it again.")
        return file

    def _name(self, file: File) -> None:
        """Give a page all that other pages say of it, and the frame needs to know."""
        planned, page = self._planned[file.src_uri], file.page or Page(None, file, self._config)
        page.markdown = ""
        page.meta = {
            "title": planned.title,
            "kind": planned.kind,
            "where": planned.where,
            "scripts": planned.scripts,
            "search": {"exclude": not planned.search},
        }

    def _filled(self, file: File, planned: SitePage) -> Page:
        """The page with its inside: what Markdown gave, or the planned HTML as it is."""
        page = file.page
        if page is None:
            raise Fault(f"The site has no page {file.src_uri}.", "Build it again.")
        if planned.markdown:
            page.read_source(self._config)
            self._name_over(page, file)
            page.render(self._config, self._files)
        else:
            page.content = planned.body
        page.toc = TableOfContents([])
        return page

    def _name_over(self, page: Page, file: File) -> None:
        markdown, own = page.markdown, dict(page.meta)
        self._name(file)
        page.markdown, page.meta = markdown, own | dict(page.meta)

    def _index(self) -> Any:  # noqa: ANN401 - the theme's search has no types
        plugin: Any = self._config.plugins.get(SEARCH)
        return plugin.search_index if plugin else None

    def _searched(self, page: Page, planned: SitePage) -> tuple[str, ...]:
        """What search is to know of a page, whose content then loses the marks that are for search alone."""
        index = self._index()
        if index is None:
            return ()
        if planned.markdown:
            index.add_entry_from_context(page)
            made = tuple(_dumped(one) for one in index.entries)
            index.entries.clear()
        else:
            body, title = unmarked(planned.body), unmarked(planned.title)
            made = entries(body, page.url, title) if planned.search else ()
        page.content = FOR_SEARCH.sub("", page.content or "")
        return made


def _dumped(entry: dict[str, object]) -> str:
    plain = {name: unmarked(said) if isinstance(said, str) else said for name, said in entry.items()}
    return json.dumps(plain, separators=(",", ":"), default=str)


def configured(plan: SitePlan, scratch: Path) -> MkDocsConfig:
    """The settings of the generator for a plan; its frame is written below `scratch`."""
    (scratch / "docs").mkdir()
    for name, text in plan.frame.items():
        write_text(scratch / "frame" / name, text)
    config = MkDocsConfig(config_file_path=str(scratch / "mkdocs.yml"))
    config.load_dict(settings(plan))
    errors, warnings = config.validate()
    if errors or warnings:
        said = "; ".join(str(text) for _, text in [*errors, *warnings])
        raise Fault(f"The site could not be built: {said}", "Install caseloom again.")
    return config


def settings(plan: SitePlan) -> dict[str, Any]:
    """The settings of the generator for a plan, but for the navigation."""
    theme: dict[str, Any] = {"name": "material", "language": "en", "font": False}
    return {
        "site_name": plan.name,
        "site_url": "",
        "docs_dir": "docs",
        "use_directory_urls": False,
        "theme": theme | ({"custom_dir": "frame"} if plan.frame else {}),
        "plugins": [SEARCH] if plan.search else [],
        "markdown_extensions": list(EXTENSIONS),
        "extra": {
            "generator": False,
            "language": plan.language,
            "footer": plan.footer.splitlines(),
            "words": plan.words,
            "search": plan.search,
            "flags": plan.flags.replace(".md", ".html"),
        },
    }


def listing(plan: SitePlan) -> list[dict[str, Any]]:
    """The sections of the navigation; a lone page at the top stands for itself."""
    return [
        {one.title: one.pages[0] if len(one.pages) == 1 and "/" not in one.pages[0] else list(one.pages)}
        for one in plan.sections
    ]
