"""A Chromium that is killed while somebody answers: what was answered when, and what is found afterwards."""

import json
import os
import random
import shutil
import signal
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from playwright.sync_api import BrowserType, Error, Page

from tests.chromium import QUIET

SURE = 1.0  # seconds: what was answered longer ago than this must be there
STARTS_WITHIN = 30.0
State = dict[str, Any]

# Answers at random every few milliseconds through the page's own controls, and reports what stands then.
ANSWERING = """
name => setInterval(() => {
  const all = [...document.querySelectorAll('#paper input')];
  all[Math.floor(Math.random() * all.length)].click();
  report(Date.now(), localStorage.getItem(name));
}, 35)
"""
HELD = "name => localStorage.getItem(name)"
SHOWN = """
[...document.querySelectorAll('fieldset[data-question]')].map(box =>
  [box.dataset.question, window.caseloom.kindOf(box).read(box)])
"""


@dataclass
class Killed:
    """One kill: how long somebody had answered, how many answers, and how old the oldest lost one was."""

    after: float
    answers: int
    lost: float = 0.0


@dataclass
class Doomed:
    """One profile that outlives its browsers, at one page of a test."""

    kind: BrowserType
    profile: Path
    page: str
    name: str
    chance: random.Random
    known: State | None = None
    kills: list[Killed] = field(default_factory=list)

    def once(self) -> None:
        """Open, look for what was answered before, answer on, and be killed at a random moment."""
        with self._running() as (process, page):
            told: list[tuple[float, str]] = []
            page.expose_function("report", lambda at, text: told.append((at / 1000, text)))
            page.goto(self.page)
            page.wait_for_selector(".keeping:not(:empty)")
            self._look(page)
            page.evaluate(ANSWERING, self.name)
            begun, end = time.time(), time.time() + self.chance.uniform(0.05, 2.5)
            while time.time() < end:
                page.wait_for_timeout(5)
            os.killpg(process.pid, signal.SIGKILL)
            killed = time.time()
            process.wait()
        self._told, self._killed = told, killed
        self.kills.append(Killed(killed - begun, len(told)))

    def last(self) -> None:
        """Open once more, to look for what the last browser was told."""
        with self._running() as (process, page):
            page.goto(self.page)
            page.wait_for_selector(".keeping:not(:empty)")
            self._look(page)
            os.killpg(process.pid, signal.SIGKILL)
            process.wait()

    def _look(self, page: Page) -> None:
        held: State = json.loads(page.evaluate(HELD, self.name))
        shown = {one: value for one, value in page.evaluate(SHOWN) if value is not None}
        kept = {one: cell["value"] for one, cell in held["answers"].items() if cell["value"] is not None}
        assert shown == kept, "the page shows what is kept"
        if self.kills:
            missing = [at for at, text in self._told if _tick(json.loads(text)) > _tick(held)]
            self.kills[-1].lost = max((self._killed - at for at in missing), default=0.0)

    @contextmanager
    def _running(self) -> Iterator[tuple[subprocess.Popen[bytes], Page]]:
        process, port = started(self.profile)
        browser = self.kind.connect_over_cdp(f"http://127.0.0.1:{port}")
        try:
            yield process, browser.contexts[0].new_page()
        finally:
            if process.poll() is None:
                os.killpg(process.pid, signal.SIGKILL)
                process.wait()
            with suppress(Error):
                browser.close()


def _tick(state: State) -> int:
    tick: int = state["tick"]
    return tick


def started(profile: Path, *more: str) -> tuple[subprocess.Popen[bytes], int]:
    """A Chromium in a process group of its own, and the port it can be driven through."""
    told = profile / "DevToolsActivePort"
    told.unlink(missing_ok=True)
    program = shutil.which(os.environ.get("CHROMIUM", "chromium"))
    flags = [*QUIET, "--headless=new", "--remote-debugging-port=0", f"--user-data-dir={profile}", *more]
    flags += ["--no-sandbox"] if os.geteuid() == 0 else []
    process = subprocess.Popen(
        [str(program), *flags, "about:blank"],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        start_new_session=True,
    )
    end = time.monotonic() + STARTS_WITHIN
    while time.monotonic() < end:
        with suppress(OSError):
            if len(lines := told.read_text(encoding="ascii").splitlines()) > 1:
                return process, int(lines[0])
        time.sleep(0.02)
    os.killpg(process.pid, signal.SIGKILL)
    raise TimeoutError("Chromium did not start.")


def figures(kills: list[Killed]) -> str:
    """What is printed of many kills."""
    answers = sum(one.answers for one in kills)
    return (
        f"{len(kills)} kills while answering, {answers} answers reported; "
        f"kills that cost an answer: {sum(one.lost > 0 for one in kills)}; "
        f"oldest lost answer: {1000 * max(one.lost for one in kills):.0f} ms before its kill."
    )
