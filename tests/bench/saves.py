"""Saves under a running preview, each timed until the page that shows it has been fetched."""

import os
import re
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from http.client import HTTPConnection
from pathlib import Path

Edit = Callable[[Path, str], None]
COMMAND = "from builder.cli import main; main()"
PAUSE = 0.7  # seconds between two saves, as nobody saves without a break


@contextmanager
def previewed(folder: Path, home: Path) -> Iterator[int]:
    """A preview in a process of its own; its port."""
    process = subprocess.Popen(
        [
            sys.executable,
            "-u",
            "-c",
            "from builder.cli import main; main()",
            "preview",
            str(folder),
            "--port",
            "0",
        ],
        stdout=subprocess.PIPE,
        text=True,
        env=os.environ | {"XDG_CONFIG_HOME": str(home)},
    )
    assert process.stdout is not None
    port = next(
        int(found[1]) for line in process.stdout if (found := re.search(r"127\.0\.0\.1:(\d+)/", line))
    )
    try:
        yield port
    finally:
        process.terminate()
        process.communicate()


def saves(folder: Path, home: Path, count: int, edit: Edit, case: str) -> Iterator[float]:
    """The seconds of each save."""
    name = case.replace("_", "-")
    with previewed(folder, home) as port, closing(HTTPConnection("127.0.0.1", port)) as listening:
        listening.request("GET", "/-/changes")
        news = listening.getresponse()
        _next_version(news)
        for number in range(count):
            words = f"Saved for the {number}th time"
            before = time.perf_counter()
            edit(folder, words)
            while words not in _page(port, f"/students/cases/{name}.html", news):
                pass
            yield time.perf_counter() - before
            time.sleep(PAUSE)


def _page(port: int, address: str, news: Iterator[bytes]) -> str:
    """The page as it is after the next notice."""
    _next_version(news)
    with closing(HTTPConnection("127.0.0.1", port)) as connection:
        connection.request("GET", address)
        return connection.getresponse().read().decode("utf-8")


def _next_version(news: Iterator[bytes]) -> None:
    next(line for line in news if line.startswith(b"data:"))
