"""The door to the file system's notices: says when something in a folder was saved, renamed or removed."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from threading import Event

from watchfiles import Change, watch

SETTLED = 60  # milliseconds within which the writes of one save come in
STEP = 20
WAKE = 500  # milliseconds after which it is seen that the work is to end


def changes(folder: Path, wanted: Callable[[str], bool], stop: Event) -> Iterator[None]:
    """One turn for every burst of changes to files that are `wanted`, by their path below the folder."""
    root = folder.resolve()

    def of_us(_change: Change, path: str) -> bool:
        below = Path(path)
        return wanted(below.relative_to(root).as_posix() if below.is_relative_to(root) else below.name)

    noticed = watch(
        root,
        watch_filter=of_us,
        debounce=SETTLED,
        step=STEP,
        stop_event=stop,
        rust_timeout=WAKE,
        raise_interrupt=False,
    )
    for _ in noticed:
        yield
