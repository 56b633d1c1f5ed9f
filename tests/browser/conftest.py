"""A fresh visitor a test, and the site both as a folder and on a server."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from tests.browser.visitor import Visitor
from tests.render.sample_site import built

Visit = Callable[..., Visitor]


class _Quiet(SimpleHTTPRequestHandler):
    """Serves files without a line for each."""

    def log_message(self, *_: object) -> None:
        """Say nothing."""


@pytest.fixture(scope="session")
def served(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The address of the sample site on a server, below a path of its own."""
    root = tmp_path_factory.mktemp("served")
    (root / "a course").symlink_to(built(), target_is_directory=True)
    with ThreadingHTTPServer(("127.0.0.1", 0), partial(_Quiet, directory=str(root))) as server:
        thread = threading.Thread(target=server.serve_forever, daemon=True)
        thread.start()
        yield f"http://127.0.0.1:{server.server_port}/a%20course/"
        server.shutdown()
        thread.join()


@pytest.fixture
def visit(browser: Browser) -> Iterator[Visit]:
    """A function that brings a visitor; at the end none of theirs has left the machine or failed."""
    visitors: list[Visitor] = []

    def come(
        root: str | Path | None = None, *, width: int = 390, scripts: bool = True, **more: object
    ) -> Visitor:
        where = root if isinstance(root, str) else f"{(root or built()).as_uri()}/"
        size = {"width": width, "height": 844}
        context = browser.new_context(viewport=size, java_script_enabled=scripts, **more)  # type: ignore[arg-type]
        visitor = Visitor(context, context.new_page(), where)
        visitor.watch()
        visitors.append(visitor)
        return visitor

    yield come
    for visitor in visitors:
        visitor.context.close()
    assert [url for visitor in visitors for url in visitor.outside()] == []
    assert [error for visitor in visitors for error in visitor.errors] == []
