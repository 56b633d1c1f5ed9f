"""The instructor's pages, on this machine alone and behind a key that opens once."""

from __future__ import annotations

import hmac
import json
import secrets
import time
from collections.abc import Callable
from threading import Lock

from builder.doors.serve import Answer, Asked, elsewhere
from builder.fault import Fault
from builder.flow.hall import OpenClass
from builder.host.board import Board, counted
from builder.host.entrance import Entrance
from builder.host.hall import Hall
from builder.host.notices import Notices
from builder.host.pages import Pages
from builder.host.shelf import NOTHING

COOKIE = "caseloom_desk"
JSON = "application/json"


class Desk:
    """Answers to the instructor's own browser."""

    def __init__(
        self, desk: OpenClass, board: Board, notices: Notices, entrance: Entrance, hall: Hall
    ) -> None:
        self._desk, self._board, self._notices, self._entrance = desk, board, notices, entrance
        self._hall = hall
        self._pages = Pages(desk)
        self.key = secrets.token_urlsafe(18)
        self._session = secrets.token_urlsafe(32)
        self._used = False
        self._lock = Lock()
        self._told: dict[str, Callable[[], object]] = {"/state": self.state, "/counts": self.counts}

    def answer(self, asked: Asked) -> Answer:
        """The answer to one request; without the cookie there is nothing but the door."""
        if found := self._pages.asset(asked.path):
            return found
        if key := asked.query.get("key"):
            return self._let_in(key)
        if not hmac.compare_digest(asked.cookie(COOKIE).encode(), self._session.encode()):
            return self._pages.closed()
        return self._done(asked) if asked.method == "POST" else self._shown(asked)

    def _shown(self, asked: Asked) -> Answer:
        if tell := self._told.get(asked.path):
            return _json(tell())
        if asked.path == "/":
            return self._pages.desk(self.state())
        if asked.path == "/screen":
            start = self._pages.start(asked.query.get("at", ""))
            self._hall.start = f"/{start}"
            return self._pages.screen(self._entrance.way, start, self.counts())
        return NOTHING

    def state(self) -> dict[str, object]:
        """All that the instructor sees, in words."""
        if self._desk.refresh():
            self._board.filled(self._desk.standing(), self._desk.taught.owners)
        if self._desk.sound:
            self._notices.drop("roster")
        else:
            self._notices.add("roster", "host_roster")
        places = self._board.places(self._desk.taught.participants, time.monotonic())
        return {
            "way": self._entrance.way,
            "addresses": [[one.address, one.connection] for one in self._entrance.addresses()],
            "counts": self._pages.counts(counted(places)),
            "people": [self._pages.row(one) for one in places],
            "notices": self._notices.lines(),
            "aside": [self._pages.aside(one) for one in self._desk.aside()],
        }

    def counts(self) -> dict[str, object]:
        """What a room may see: how many, and no names."""
        places = self._board.places(self._desk.taught.participants, time.monotonic())
        return {"counts": self._pages.counts(counted(places)), "way": self._entrance.way}

    def _let_in(self, key: str) -> Answer:
        """The key opens once; whoever has come in is known by a cookie that no other site may use."""
        with self._lock:
            if self._used or not hmac.compare_digest(key.encode(), self.key.encode()):
                return self._pages.closed()
            self._used = True
        led = elsewhere("/")
        led.headers["Set-Cookie"] = f"{COOKIE}={self._session}; HttpOnly; SameSite=Strict; Path=/"
        return led

    def _done(self, asked: Asked) -> Answer:
        try:
            told = json.loads(asked.body or b"{}")
            if asked.path == "/open":
                self._entrance.open(str(told["address"]))
            elif asked.path == "/shut":
                self._entrance.shut()
            else:
                return NOTHING
        except Fault as fault:
            return _json({"fault": f"{fault.message} {fault.remedy}"}, 409)
        except (ValueError, KeyError, TypeError):
            return _json({"fault": ""}, 400)
        return _json(self.state())


def _json(data: object, status: int = 200) -> Answer:
    return Answer(json.dumps(data, ensure_ascii=False).encode("utf-8"), JSON, status)
