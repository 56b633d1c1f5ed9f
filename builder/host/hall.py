"""What the hall's own address answers: the site, the host's script, and a tray for sheets. Nothing else."""

from __future__ import annotations

import json
import time

from builder.doors.serve import Answer, Asked, elsewhere
from builder.flow.hall import OpenClass, TrayFull
from builder.host.board import Board
from builder.host.notices import Notices
from builder.host.shelf import NOTHING, Shelf
from builder.model.arrival import Arrival
from builder.model.code import tidy
from builder.model.words import unmarked

LARGEST = 1_000_000  # bytes: four times the largest sheet, so that one too large can still be kept aside
MOST_PING = 400
START = "/index.html"
HAND, HERE = "/hand", "/here"
JSON = "application/json"
AGAIN = 503


class Hall:
    """Answers to phones, for one class; `start` is where the bare address leads."""

    def __init__(self, desk: OpenClass, board: Board, notices: Notices) -> None:
        self._desk, self._board, self._notices = desk, board, notices
        told = json.dumps({"class": desk.taught.taught.id, "refused": unmarked(desk.say("host_no_more"))})
        self.start = START
        self._shelf = Shelf(desk.publish, told)

    def answer(self, asked: Asked) -> Answer:
        """The answer to one phone."""
        if asked.method == "POST":
            return self._posted(asked)
        if asked.path == "/":
            return elsewhere(self.start)
        return self._shelf.answer(asked)

    def _posted(self, asked: Asked) -> Answer:
        if asked.path == HAND:
            return self._taken(asked.body)
        return self._heard(asked.body) if asked.path == HERE else NOTHING

    def _taken(self, data: bytes) -> Answer:
        """A receipt, once the sheet is on the disk; else a line that says what to do."""
        try:
            arrival = self._desk.take(data)
        except TrayFull as full:
            self._notices.add("full", "host_full", fault=full.message)
            return _told({"line": self._line("host_no_more")}, 422)
        except OSError as error:
            self._notices.add("disk", "host_disk", fault=error.strerror or type(error).__name__)
            return _told({"line": self._line("host_not_now")}, AGAIN)
        self._notices.drop("disk")
        return self._received(arrival)

    def _received(self, arrival: Arrival) -> Answer:
        if not arrival.taken:
            return _told({"line": self._line("host_aside", fault=arrival.fault)}, 422)
        owner = self._desk.taught.owners.get(arrival.code)
        if owner is not None:
            self._board.came(owner, arrival)
        return _told({"received": arrival.receipt, "at": arrival.at.isoformat()}, 200)

    def _line(self, word: str, **blanks: str) -> str:
        return unmarked(self._desk.say(word, **blanks))

    def _heard(self, data: bytes) -> Answer:
        """Where a phone stands: its code, how many it answered, of how many."""
        try:
            told = json.loads(data) if len(data) <= MOST_PING else None
        except ValueError:
            told = None
        if not isinstance(told, dict):
            return _told({}, 400)
        owner = self._desk.taught.owners.get(tidy(str(told.get("code"))))
        answered, of = told.get("answered"), told.get("of")
        if owner is None or not (type(answered) is type(of) is int and 0 <= answered <= of <= MOST_PING):
            return _told({}, 422)
        self._board.here(owner, answered, of, time.monotonic())
        return _told({}, 200)


def _told(data: object, status: int) -> Answer:
    text = json.dumps(data, ensure_ascii=False).encode("utf-8")
    return Answer(text, JSON, status, {"Cache-Control": "no-store"})
