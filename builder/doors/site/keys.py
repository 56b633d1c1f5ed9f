"""Fingerprints of the pages of a site: of everything that one page, as it is published, can show."""

from __future__ import annotations

from builder.doors.cache import digest
from builder.model.site import SitePage, SitePlan

LISTED = 50  # as many pages of its own section as the frame lists on a page


def page_keys(plan: SitePlan) -> dict[str, str]:
    """The key of every page by its address; pages of two plans with the same key have the same bytes."""
    around, seen = shell_key(plan), _Surroundings(plan)
    return {page.address: digest(around, seen.of(page), _inside(page)) for page in plan.pages}


def shell_key(plan: SitePlan) -> str:
    """The fingerprint of what is the same around every page."""
    frame = sorted(plan.frame.items())
    return digest(
        repr(
            [plan.name, plan.language, plan.footer, plan.search, plan.flags, frame, list(plan.words.items())]
        )
    )


def _inside(page: SitePage) -> str:
    known = f"made from {page.made_from}" if page.made_from else page.body
    head = [page.address, page.title, page.search, page.kind, page.where, page.markdown, page.scripts]
    return digest(repr(head), known)


class _Surroundings:
    """What the frame of a page says of other pages."""

    def __init__(self, plan: SitePlan) -> None:
        titles = {page.address: page.title for page in plan.pages}
        self._sections = [
            (one.title, [(address, titles.get(address, "")) for address in one.pages])
            for one in plan.sections
        ]
        self._first = [(title, pages[0]) for title, pages in self._sections if pages]
        listed = [page for _, pages in self._sections for page in pages]
        self._place = {address: number for number, (address, _) in enumerate(listed)}
        self._row: list[tuple[str, str] | None] = [None, *listed, None]
        self._own = {address: pages for _, pages in self._sections for address, _ in pages}
        self._linked = sorted(titles)

    def of(self, page: SitePage) -> str:
        """All of it as one text; a page in Markdown may link to any page that there is."""
        place = self._place.get(page.address)
        beside = (self._row[place], self._row[place + 2]) if place is not None else None
        own = self._own.get(page.address, [])[:LISTED]
        return repr((self._first, own, beside, self._linked if page.markdown else None))
