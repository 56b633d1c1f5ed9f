"""Debian's Chromium, as the tests and the maker of the demonstration's answer sheets start it."""

import os
import shutil
from collections.abc import Iterator
from contextlib import contextmanager

from playwright.sync_api import Browser, sync_playwright

QUIET = (
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)


@contextmanager
def chromium() -> Iterator[Browser]:
    """A headless browser; root may only run it without its sandbox."""
    program = os.environ.get("CHROMIUM", "chromium")
    flags = [*QUIET, "--no-sandbox"] if os.geteuid() == 0 else list(QUIET)
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=shutil.which(program), args=flags)
        yield browser
        browser.close()
