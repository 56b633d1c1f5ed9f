"""The door to the site generator: builds a planned site with MkDocs and Material, all in memory."""

from __future__ import annotations

import logging
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from mkdocs.commands.build import build
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import Abort, MkDocsException
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files
from mkdocs.structure.pages import Page
from mkdocs.structure.toc import TableOfContents

from builder.disk import write_text
from builder.fault import Fault
from builder.model.site import SitePage, SitePlan

EXTENSIONS = ("abbr", "admonition", "attr_list", "def_list", "footnotes", "md_in_html", "tables", "toc")
INDEX = "search/search_index"


class _Planned(BasePlugin):  # type: ignore[no-untyped-call,type-arg]
    """Hands the planned pages to MkDocs."""

    def __init__(self, plan: SitePlan) -> None:
        super().__init__()
        self.plan = plan
        self.pages = {page.address: page for page in plan.pages}

    def on_files(self, _files: Files, *, config: MkDocsConfig) -> Files:
        """The planned pages and assets, and nothing else: no file of the theme that nothing uses."""
        sources = {page.address: page.body if page.markdown else "" for page in self.plan.pages}
        return Files(
            [File.generated(config, uri, content=text) for uri, text in (sources | self.plan.assets).items()]
        )

    def on_page_markdown(self, markdown: str, *, page: Page, **_: object) -> str:
        """Tell the frame what it needs to know of a page."""
        planned = self._planned(page)
        page.meta.update(title=planned.title, kind=planned.kind, where=planned.where)
        page.meta.update(scripts=planned.scripts, search={"exclude": not planned.search})
        return markdown

    def on_page_content(self, html: str, *, page: Page, **_: object) -> str:
        """The inside of the page: what Markdown gave, or the planned HTML as it is."""
        planned = self._planned(page)
        page.toc = TableOfContents([])
        return html if planned.markdown else planned.body

    def on_post_build(self, *, config: MkDocsConfig) -> None:
        """Give the search index as a script, since a page opened from a folder can read nothing else."""
        written = Path(config.site_dir) / f"{INDEX}.json"
        if written.exists():
            write_text(
                written.with_suffix(".js"), f"var caseloomIndex = {written.read_text(encoding='utf-8')};\n"
            )
            written.unlink()

    def _planned(self, page: Page) -> SitePage:
        return self.pages[page.file.src_uri]


class _Heard(logging.Handler):
    """Keeps what MkDocs warns of."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.lines: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        """Keep the warning's first line."""
        self.lines.append(record.getMessage().strip().splitlines()[0])


def build_site(plan: SitePlan, target: Path) -> None:
    """Build the planned site into the folder `target`; a warning of MkDocs is a Fault.

    The same plan gives the same bytes. One build a process at a time.
    """
    with TemporaryDirectory() as scratch, _listening() as heard:
        try:
            _run(_configured(plan, Path(scratch), target))
        except (MkDocsException, Abort) as error:
            said = "; ".join(heard.lines) or str(error)
            raise Fault(
                f"The site could not be built: {said}", "Mend the page that is named and build again."
            ) from error
    if not (target / "index.html").is_file():
        raise Fault("The site was built without its first page.", "Install caseloom again.")


def _configured(plan: SitePlan, scratch: Path, target: Path) -> MkDocsConfig:
    (scratch / "docs").mkdir()
    for name, text in plan.frame.items():
        write_text(scratch / "frame" / name, text)
    config = MkDocsConfig(config_file_path=str(scratch / "mkdocs.yml"))
    config.load_dict(_settings(plan, target))
    errors, warnings = config.validate()
    if errors or warnings:
        said = "; ".join(str(text) for _, text in [*errors, *warnings])
        raise Fault(f"The site could not be built: {said}", "Install caseloom again.")
    config.theme.static_templates.clear()
    config.plugins["builder/planned"] = _Planned(plan)
    return config


def _settings(plan: SitePlan, target: Path) -> dict[str, Any]:
    theme: dict[str, Any] = {"name": "material", "language": "en", "font": False}
    return {
        "site_name": plan.name,
        "site_url": "",
        "site_dir": str(target.resolve()),
        "docs_dir": "docs",
        "use_directory_urls": False,
        "strict": True,
        "theme": theme | ({"custom_dir": "frame"} if plan.frame else {}),
        "plugins": ["material/search"] if plan.search else [],
        "markdown_extensions": list(EXTENSIONS),
        "nav": [_listed(section.title, section.pages) for section in plan.sections],
        "extra": {
            "generator": False,
            "language": plan.language,
            "footer": plan.footer.splitlines(),
            "words": plan.words,
            "search": plan.search,
            "flags": plan.flags.replace(".md", ".html"),
        },
    }


def _listed(title: str, pages: tuple[str, ...]) -> dict[str, Any]:
    """A section of the navigation; a lone page at the top stands for itself."""
    alone = len(pages) == 1 and "/" not in pages[0]
    return {title: pages[0] if alone else list(pages)}


def _run(config: MkDocsConfig) -> None:
    config.plugins.on_startup(command="build", dirty=False)
    try:
        build(config)
    finally:
        config.plugins.on_shutdown()


@contextmanager
def _listening() -> Iterator[_Heard]:
    logger, heard = logging.getLogger("mkdocs"), _Heard()
    kept = logger.level, logger.propagate
    logger.addHandler(heard)
    logger.setLevel(logging.WARNING)
    logger.propagate = False
    try:
        yield heard
    finally:
        logger.removeHandler(heard)
        logger.setLevel(kept[0])
        logger.propagate = kept[1]
