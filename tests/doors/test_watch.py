"""The notices of the file system: every way of saving is one, and what is not wanted is none."""

import shutil
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import Event, Thread

import pytest

from builder.doors.watch import changes

LONG = 20.0


@contextmanager
def watching(folder: Path) -> Iterator[list[float]]:
    """The times of every notice, as they come in."""
    stop, times = Event(), list[float]()

    def follow() -> None:
        for _ in changes(folder, lambda path: not path.startswith("out/"), stop):
            times.append(time.monotonic())

    thread = Thread(target=follow)
    thread.start()
    time.sleep(0.5)
    try:
        yield times
    finally:
        stop.set()
        thread.join(LONG)
        assert not thread.is_alive()


def until(there: Callable[[], bool]) -> bool:
    """Whether something comes true in good time."""
    end = time.monotonic() + LONG
    while not there() and time.monotonic() < end:
        time.sleep(0.02)
    return there()


def in_place(path: Path) -> None:
    """A save that writes into the file."""
    path.write_text("b", encoding="utf-8")


def by_rename(path: Path) -> None:
    """A save as many editors do it: a new file takes the place of the old."""
    draft = path.with_name(".a.yml.draft")
    draft.write_text("b", encoding="utf-8")
    draft.replace(path)


def by_backup(path: Path) -> None:
    """A save that moves the old file away and writes a new one."""
    path.rename(path.with_name("a.yml~"))
    path.write_text("b", encoding="utf-8")


def deleted(path: Path) -> None:
    """A file taken away."""
    path.unlink()


def folder_gone(path: Path) -> None:
    """A whole folder taken away."""
    shutil.rmtree(path.parent)


@pytest.mark.parametrize("save", [in_place, by_rename, by_backup, deleted, folder_gone])
def test_every_way_of_saving_is_noticed(tmp_path: Path, save: Callable[[Path], None]) -> None:
    """Each brings at least one notice."""
    path = tmp_path / "cases" / "a.yml"
    path.parent.mkdir()
    path.write_text("a", encoding="utf-8")
    with watching(tmp_path) as times:
        save(path)
        assert until(lambda: bool(times))


def test_what_is_not_wanted_is_not_noticed(tmp_path: Path) -> None:
    """What is built below the folder brings nothing; the save after it does."""
    (tmp_path / "out").mkdir()
    with watching(tmp_path) as times:
        (tmp_path / "out" / "page.html").write_text("x", encoding="utf-8")
        time.sleep(0.5)
        assert times == []
        (tmp_path / "a.yml").write_text("x", encoding="utf-8")
        assert until(lambda: bool(times))
