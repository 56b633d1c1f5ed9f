"""Leaves a planned site as a folder that plain `mkdocs build` builds, without this tool."""

from __future__ import annotations

import json
from pathlib import Path

from builder.disk import write_bytes, write_text
from builder.doors.site.build import INDEX
from builder.doors.site.press import EXTENSIONS, Press, listing, settings
from builder.model.site import SitePage, SitePlan
from builder.model.words import marked, unmarked

# Plain MkDocs fills the theme's own page for lost visitors without a page, which our frame cannot do; where
# the plan has such a page, it is written over this one.
LOST = {"404.html": "<!doctype html>\n<title>{{ config.site_name }}</title>\n"}


def leave_site(plan: SitePlan, target: Path) -> None:
    """Write settings, frame, pages, assets and search index of a plan below `target`.

    Media of the course are the caller's to put into `docs`. The settings are JSON, which is YAML as well.
    """
    with Press(plan) as press:
        entries = [entry for page in plan.pages for entry in press.page(page.address).entries]
        index = {INDEX: press.index(entries)} if plan.search else {}
    extensions = [{"toc": {"toc_depth": 0}} if one == "toc" else one for one in EXTENSIONS]
    laid = {**settings(plan), "markdown_extensions": extensions, "site_dir": "site", "nav": listing(plan)}
    write_text(target / "mkdocs.yml", json.dumps(laid, ensure_ascii=False, indent=1) + "\n")
    for name, text in {**plan.frame, **LOST}.items():
        write_text(target / "frame" / name, text)
    for page in plan.pages:
        write_text(target / "docs" / page.address, _page(page))
    for name, data in {**plan.assets, **index}.items():
        write_bytes(target / "docs" / name, data)


def _page(page: SitePage) -> str:
    """What the frame must know of a page, as JSON between the lines that begin YAML; then its inside.

    HTML stands in one block of its own, in which Markdown changes nothing.
    """
    known = {
        "title": unmarked(page.title),
        "kind": page.kind,
        "where": unmarked(page.where),
        "scripts": page.scripts,
        "search": {"exclude": not page.search},
    }
    inside = page.body if page.markdown else f"<div>\n{marked(page.body).strip()}\n</div>"
    return f"---\n{json.dumps(known, ensure_ascii=False, indent=1)}\n---\n\n{inside}\n"
