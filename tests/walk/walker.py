"""A browser page that goes from kind to kind and notes every request and every error on the way."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Literal
from urllib.parse import urlsplit

from playwright.sync_api import Browser

from tests.browser.visitor import Visitor
from tests.walk.kinds import Kind

Scheme = Literal["light", "dark"]


class Walker(Visitor):
    """A visitor that knows the kinds of pages."""

    def walk_to(self, kind: Kind) -> None:
        """Open a page of this kind afresh, in its state, keeping nothing of the one before."""
        self.page.goto("about:blank")
        self.go(f"{kind.side}/{kind.address}")
        kept = self.page.evaluate("() => { const n = localStorage.length; localStorage.clear(); return n; }")
        if kept:
            self.page.reload()
        kind.ready(self.page)


@contextmanager
def walker(
    browser: Browser, root: Path | str, *, width: int = 390, scheme: Scheme = "light", **more: object
) -> Iterator[Walker]:
    """A walker through the site below a folder or an address; at the end it has met no error."""
    where = root if isinstance(root, str) else f"{root.as_uri()}/"
    context = browser.new_context(
        viewport={"width": width, "height": 844},
        color_scheme=scheme,
        reduced_motion="reduce",
        **more,  # type: ignore[arg-type]
    )
    made = Walker(context, context.new_page(), where)
    made.watch()
    try:
        yield made
    finally:
        context.close()
    if made.errors:
        raise AssertionError(made.errors)


def outside(urls: list[str], inside: str) -> list[str]:
    """The requests that left the folder or the host that `inside` is on."""
    home = urlsplit(inside)
    return [url for url in urls if urlsplit(url)[:2] != home[:2] and not url.startswith(("data:", "blob:"))]
