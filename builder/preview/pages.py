"""What the preview answers to each address: a page of either side, an asset, its own panel."""

from __future__ import annotations

import mimetypes
from dataclasses import replace
from importlib.resources import files
from pathlib import Path
from threading import Lock

from builder.doors.serve import Answer, elsewhere
from builder.doors.site import INDEX, OpenSite
from builder.fault import Fault
from builder.flow.live import Live, Shown
from builder.model.site import SitePlan
from builder.preview.panel import bare_page, with_panel

SIDES = ("students", "instructor")
OWN = "/-/"
NOTICES = f"{OWN}changes"
LOOK = ("panel.js", "panel.css")
SCRIPT = "text/javascript; charset=utf-8"


class Pages:
    """Answers for one open course; one at a time, since the site generator knows no other way."""

    def __init__(self, live: Live) -> None:
        self._live = live
        self._sites = {side: OpenSite() for side in SIDES}
        self._lock = Lock()

    def answer(self, path: str) -> Answer:
        """The answer to a path such as `/students/cases/landing.html`."""
        if path in ("/", "/index.html"):
            return elsewhere(f"/{SIDES[0]}/index.html")
        if path.startswith(OWN):
            return _look(path.removeprefix(OWN))
        side, _, name = path.lstrip("/").partition("/")
        if side not in SIDES:
            return _nothing()
        if not name or name.endswith("/"):
            return elsewhere(f"/{side}/{name}index.html")
        with self._lock:
            return self._of_side(side, name)

    def close(self) -> None:
        """Let go of both sites."""
        with self._lock:
            for site in self._sites.values():
                site.close()

    def _of_side(self, side: str, name: str) -> Answer:
        shown = self._live.shown
        if shown.plans is None:
            return _told("This course cannot be shown yet.", shown, side, name, 503)
        plan = shown.plans[SIDES.index(side)]
        site = self._sites[side]
        try:
            site.turn_to(plan)
            found = _page(site, shown, side, name) or _asset(site, plan, name, self._live.media(name))
        except Fault as fault:
            return _told(f"{fault.message} {fault.remedy}", shown, side, name, 500)
        if found is None and name.endswith(".html"):
            return _told("This page is not, or no longer, in the course.", shown, side, name, 404)
        return found or _nothing()


def _page(site: OpenSite, shown: Shown, side: str, name: str) -> Answer | None:
    if not name.endswith(".html"):
        return None
    page = site.page(_address(name))
    if page is None:
        return None
    told = replace(shown, behind=shown.behind or name in shown.held)
    return Answer(with_panel(page.data, told, _ways(shown, side, name)))


def _asset(site: OpenSite, plan: SitePlan, name: str, media: Path | None) -> Answer | None:
    if name == INDEX:
        return Answer(site.index(), SCRIPT)
    kind = mimetypes.guess_type(name)[0] or "application/octet-stream"
    if name in plan.assets:
        return Answer(plan.assets[name], SCRIPT if name.endswith(".js") else kind)
    return None if media is None else Answer(b"", kind, file=media)


def _told(message: str, shown: Shown, side: str, name: str, status: int) -> Answer:
    return Answer(with_panel(bare_page(message), shown, _ways(shown, side, name)), status=status)


def _ways(shown: Shown, side: str, name: str) -> dict[str, str]:
    """Where the same page stands on the other side, or else its first page; by side, this one left out."""
    plans = dict(zip(SIDES, shown.plans or (), strict=False))
    there = {other: {page.address for page in plan.pages} for other, plan in plans.items()}
    return {
        other: f"/{other}/{name if _address(name) in addresses else 'index.html'}"
        for other, addresses in there.items()
        if other != side
    }


def _address(name: str) -> str:
    return f"{name.removesuffix('.html')}.md"


def _look(name: str) -> Answer:
    """The panel's own script and style; nothing else of the tool can be asked for."""
    if name not in LOOK:
        return _nothing()
    data = (files("builder.preview") / "look" / name).read_bytes()
    return Answer(data, SCRIPT if name.endswith(".js") else "text/css; charset=utf-8")


def _nothing() -> Answer:
    return Answer(b"There is nothing here.\n", "text/plain; charset=utf-8", 404)
