"""A site before it is built: pages, assets and navigation, as plain values."""

from __future__ import annotations

from builder.model.noun import Noun


class SitePage(Noun):
    """One page; `address` is its source path such as `cases/landing.md`, `body` is HTML or Markdown."""

    address: str
    title: str
    body: str
    search: bool = True
    kind: str = "page"


class SiteSection(Noun):
    """A named group of pages in the navigation; a page that is in none is built but not listed."""

    title: str
    pages: tuple[str, ...]


class SitePlan(Noun):
    """Everything the site door needs; assets are keyed by their address."""

    name: str
    language: str
    pages: tuple[SitePage, ...]
    sections: tuple[SiteSection, ...]
    assets: dict[str, bytes]
    footer: str
    search: bool = True
