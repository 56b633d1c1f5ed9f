"""Runs a preview: opens the course, serves it, and looks again after every save until it is ended."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from socket import socket
from threading import Event, Thread

from builder.doors.cache import Cache
from builder.doors.serve import LOOPBACK, Served, Server, reserve
from builder.doors.watch import changes
from builder.flow.live import Live
from builder.preview.pages import NOTICES, Pages

NOT_SOURCES = ("out", "private", "classes")
Say = Callable[[str], None]


def preview(folder: Path, cache: Cache, port: int, say: Say) -> None:
    """Serve the course until Ctrl-C; a port in use is a Fault before anything is worked out."""
    taken = reserve(port)
    live = Live(folder, cache)
    say(f"Reading {folder.resolve().name} ...")
    live.refresh()
    say(_counted(live))
    say(f"Preview: http://{LOOPBACK}:{taken.getsockname()[1]}/  (this machine only; Ctrl-C ends it)")
    serve(live, folder, taken, say)
    say("Preview ended. Nothing was written to the course.")


def serve(live: Live, folder: Path, taken: socket, say: Say) -> None:
    """Serve an open course on a reserved socket, and follow its folder."""
    pages, stop = Pages(live), Event()
    server = Server(Served(pages.answer, lambda: live.shown.version, NOTICES))
    follower = Thread(target=follow, args=(live, folder, stop, say), daemon=True)
    follower.start()
    try:
        server.run(taken)
    finally:
        stop.set()
        follower.join()
        pages.close()


def follow(live: Live, folder: Path, stop: Event, say: Say) -> None:
    """Look again after every save."""
    for _ in changes(folder, is_source, stop):
        live.refresh()
        say(_counted(live))


def is_source(path: str) -> bool:
    """Whether a file of the course can change what is shown: not what is built, hidden or half-written."""
    steps = path.split("/")
    return steps[0] not in NOT_SOURCES and not any(
        step.startswith(".") or step.endswith(("~", ".swp", ".tmp")) for step in steps
    )


def _counted(live: Live) -> str:
    left = [one for one in live.shown.to_fix if not one.accepted]
    count = sum(one.level == "error" for one in left)
    also = len(left) - count
    return f"  {count} errors, {also} other remarks" + (
        " (showing the last good state)" if live.shown.behind else ""
    )
