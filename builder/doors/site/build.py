"""Builds a planned site with MkDocs and Material, page by page, or opens it without writing anything."""

from __future__ import annotations

import logging
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

from mkdocs.exceptions import Abort, MkDocsException

from builder.doors.cache import digest
from builder.doors.site.keys import page_keys, shell_key
from builder.doors.site.press import Press, Pressed
from builder.fault import Fault
from builder.model.site import Finished, SitePlan

INDEX = "search/search_index.js"
NONE_READY: Mapping[str, Finished] = {}


class _Heard(logging.Handler):
    """Keeps what MkDocs warns of."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.lines: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        """Keep the warning's first line."""
        self.lines.append(record.getMessage().strip().splitlines()[0])


def build_site(
    plan: SitePlan, target: Path, ready: Mapping[str, Finished] = NONE_READY
) -> tuple[Finished, ...]:
    """Build the planned site into the folder `target`; a warning of MkDocs is a Fault.

    The same plan gives the same bytes. One build a process at a time. Pages that are `ready` stand in the
    folder already, as they would be built again.
    """
    with _hearing(), Press(plan) as press:
        finished = [ready.get(page.address) or _built(press, page.address, target) for page in plan.pages]
        entries = [entry for one in finished for entry in one.entries]
        written = plan.assets | ({INDEX: press.index(entries)} if plan.search else {})
    for name, data in written.items():
        _write(target / name, data)
    if not (target / "index.html").is_file():
        raise Fault("The site was built without its first page.", "Install caseloom again.")
    return tuple(finished)


@contextmanager
def _hearing() -> Iterator[None]:
    """While this is open, what MkDocs cannot do or only warns of is a Fault."""
    with _listening() as heard:
        try:
            yield
        except (MkDocsException, Abort) as error:
            raise _fault("; ".join(heard.lines) or str(error)) from error
    if heard.lines:
        raise _fault("; ".join(heard.lines))


class OpenSite:
    """A site that is never written: any page of it, pressed when it is asked for and then remembered."""

    def __init__(self) -> None:
        self._press: Press | None = None
        self._shell = ""
        self._plan: SitePlan | None = None
        self._keys: dict[str, str] = {}
        self._known: dict[str, tuple[str, Pressed]] = {}

    def turn_to(self, plan: SitePlan) -> None:
        """Show another plan from now on."""
        if plan is self._plan:
            return
        shell = shell_key(plan)
        if self._press is not None and shell == self._shell:
            self._press.turn_to(plan)
        else:
            self.close()
            self._press, self._shell = Press(plan), shell
        self._plan, self._keys = plan, page_keys(plan)

    def page(self, address: str) -> Pressed | None:
        """One page by its address, as a build would write it; None where there is none."""
        key = self._keys.get(address)
        if self._press is None or key is None:
            return None
        known = self._known.get(address)
        if known is None or known[0] != key:
            with _hearing():
                known = key, self._press.page(address)
            self._known[address] = known
        return known[1]

    def index(self) -> bytes:
        """The search index over every page."""
        pages = [self.page(address) for address in self._keys]
        entries = [entry for one in pages if one is not None for entry in one.entries]
        return self._press.index(entries) if self._press else b""

    def close(self) -> None:
        """Let go of what lies on disk."""
        if self._press is not None:
            self._press.close()
            self._press = None


def _fault(said: str) -> Fault:
    return Fault(f"The site could not be built: {said}", "Mend the page that is named and build again.")


def _built(press: Press, address: str, target: Path) -> Finished:
    page = press.page(address)
    _write(target / page.name, page.data)
    return Finished(address=address, digest=digest(page.data), entries=page.entries)


def _write(path: Path, data: bytes) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(data)


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
