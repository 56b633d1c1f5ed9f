"""A class held open over the sample site, its host in this process, and sheets of its people."""

import shutil
from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from builder.doors.machine import Reachable
from builder.doors.serve import LOOPBACK, Asked
from builder.flow.class_told import told_class
from builder.flow.hall import OpenClass
from builder.flow.records import course_and_folder
from builder.host.board import Board
from builder.host.desk import COOKIE, Desk
from builder.host.entrance import Entrance
from builder.host.hall import Hall
from builder.host.notices import Notices
from builder.model.library import Course
from builder.model.records import ClassFolder
from tests.browser.codes import code_for
from tests.demo.small import small
from tests.doors.serve.asking import Place, listening
from tests.records.made import answers, sheet_bytes
from tests.render.sample_site import built

HERE = (Reachable(LOOPBACK, "wired"),)


@cache
def course() -> tuple[Course, ClassFolder]:
    """The small course and its class, read once."""
    course, place = course_and_folder(small(), "spring")
    found = told_class(place, course).folder
    if found is None:
        raise LookupError(place)
    return course, found


def opened(root: Path, publish: Path | None = None) -> OpenClass:
    """A fresh copy of the class, open; nothing has come in yet."""
    folder = root / "classes" / "spring"
    if not folder.exists():
        shutil.copytree(small() / "classes" / "spring", folder)
        shutil.rmtree(folder / "answers")
    return OpenClass(folder, course()[0], publish or built())


def codes() -> list[str]:
    """The first code of everyone on the roster, in its order."""
    return [one.code for one in course()[1].participants]


def sheet(code: str, **changed: object) -> bytes:
    """An answer sheet of this class."""
    return sheet_bytes(code, answers(), **changed)


@dataclass
class Host:
    """Everything that one host is made of; answered without a network."""

    desk: OpenClass
    board: Board
    notices: Notices
    hall: Hall
    entrance: Entrance
    own: Desk

    def ask(self, path: str, body: bytes | None = None) -> tuple[int, bytes]:
        """What a phone gets to one request."""
        answer = self.hall.answer(Asked("GET" if body is None else "POST", path, body=body or b""))
        return answer.status, answer.body

    def key(self) -> dict[str, str]:
        """The header of an instructor who has come in."""
        led = self.own.answer(Asked("GET", "/", {"key": self.own.key}))
        return {"cookie": led.headers["Set-Cookie"].partition(";")[0]}


def made(root: Path, publish: Path | None = None, heard: list[str] | None = None) -> Host:
    """A host over a fresh class; nothing listens yet. The hall may be opened on this machine alone."""
    desk, board = opened(root, publish), Board()
    notices = Notices(desk.say, (heard if heard is not None else []).append)
    hall = Hall(desk, board, notices)
    board.filled(desk.standing(), desk.taught.owners)
    entrance = Entrance(hall.answer, 0, notices, lambda: HERE)
    return Host(desk, board, notices, hall, entrance, Desk(desk, board, notices, entrance, hall))


@contextmanager
def hall_of(host: Host) -> Iterator[Place]:
    """The hall of a host, open."""
    host.entrance.open(LOOPBACK)
    try:
        yield Place(int(host.entrance.way.rstrip("/").rpartition(":")[2]), [])
    finally:
        host.entrance.shut()


def desk_of(host: Host) -> AbstractContextManager[Place]:
    """The instructor's pages of a host, served."""
    return listening(host.own.answer)


__all__ = ["COOKIE", "Host", "code_for", "codes", "desk_of", "hall_of", "made", "opened", "sheet"]
