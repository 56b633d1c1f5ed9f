"""A site before it is built: pages, assets and navigation, as plain values."""

from __future__ import annotations

from pydantic import Field

from builder.model.noun import Noun


class SitePage(Noun):
    """One page; `address` is its source path such as `cases/landing.md`.

    `body` is the inside of the page as HTML, or Markdown where `markdown` says so; `where` is what the
    bar says of the place, `scripts` the assets that this page alone needs. `made_from` is the fingerprint
    of all that the body was made from, where it is known: the body may then be left out until it is needed.
    """

    address: str
    title: str
    body: str
    search: bool = True
    kind: str = "page"
    where: str = ""
    markdown: bool = False
    scripts: tuple[str, ...] = ()
    made_from: str = ""


class SiteSection(Noun):
    """A named group of pages in the navigation; a page that is in none is built but not listed."""

    title: str
    pages: tuple[str, ...]


class SitePlan(Noun):
    """Everything the site door needs; assets are keyed by their address.

    `frame` holds the templates around every page, by name; `words` are theirs to say; `flags` is the page
    that the bar always leads to; `footer` ends every page, a paragraph a line; `media` names the
    files of the course that stand beside the pages.
    """

    name: str
    language: str
    pages: tuple[SitePage, ...]
    sections: tuple[SiteSection, ...]
    assets: dict[str, bytes]
    footer: str
    search: bool = True
    frame: dict[str, str] = Field(default_factory=dict)
    words: dict[str, str] = Field(default_factory=dict)
    flags: str = ""
    media: tuple[str, ...] = ()


class Finished(Noun):
    """What is kept of a page that was built: the digest of its bytes, and what search knows of it."""

    address: str
    digest: str
    entries: tuple[str, ...]
