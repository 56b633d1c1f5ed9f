"""Listens on one address: only under its own name, only what is asked well, within measure."""

from __future__ import annotations

import asyncio
import time
from collections.abc import Callable

from starlette.concurrency import run_in_threadpool
from starlette.requests import ClientDisconnect, Request
from starlette.types import Receive, Scope, Send

from builder.doors.serve.answer import Answer, Asked
from builder.doors.serve.manners import Manners, Pace
from builder.doors.serve.patience import Patient
from builder.doors.serve.respond import respond
from builder.doors.serve.running import Running

SLOWEST = 30.0  # seconds in which the whole of a body must come
MOST_OPEN = 900
HEARD_OUT = 3
JSON = "application/json"
TEXT = "text/plain; charset=utf-8"
GIVEN_UP = 408
TOO_LARGE = 413


class Listener(Running):
    """Answers GET, HEAD and POST on one socket; a POST must come from a page of our own."""

    def __init__(
        self, answer: Callable[[Asked], Answer], manners: Manners, trouble: Callable[[Exception], None]
    ) -> None:
        self._answer, self._manners, self._trouble = answer, manners, trouble
        self._pace = Pace(manners.burst, manners.a_second)
        super().__init__(self, http=Patient, log_level="critical", limit_concurrency=MOST_OPEN)

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """One request, from its head to the answer."""
        request = Request(scope, receive)
        answer = self._turned_away(request) or await self._heard(request)
        headers = dict(self._manners.headers)
        if answer.status in (GIVEN_UP, TOO_LARGE):
            headers["Connection"] = "close"
        await respond(answer, headers)(scope, receive, send)

    def _turned_away(self, request: Request) -> Answer | None:
        host = request.headers.get("host", "")
        if host not in self._manners.hosts:
            return _line("This host has another name.", 421)
        if request.method not in ("GET", "HEAD", "POST"):
            return _line("This is not done here.", 405)
        if not self._pace.allows(_peer(request), time.monotonic()):
            return Answer(b"Too often; wait a moment.\n", TEXT, 429, {"Retry-After": "5"})
        return self._not_ours(request, host) if request.method == "POST" else None

    def _not_ours(self, request: Request, host: str) -> Answer | None:
        if request.headers.get("origin") != f"http://{host}":
            return _line("Only a page of this host may send here.", 403)
        if request.headers.get("content-type", "").partition(";")[0].strip() != JSON:
            return _line("Only JSON is taken.", 415)
        return None

    async def _heard(self, request: Request) -> Answer:
        try:
            body = await asyncio.wait_for(self._body(request), SLOWEST)
        except (TimeoutError, ClientDisconnect):
            return _line("The rest never came.", GIVEN_UP)
        if body is None:
            return _line(f"This is larger than {self._manners.largest:,} bytes.", TOO_LARGE)
        headers = {name: value for name, value in request.headers.items()}  # noqa: C416 - some stand twice; the last counts
        query = dict(request.query_params)
        asked = Asked(request.method, request.scope["path"], query, headers, body, _peer(request))
        try:
            return await run_in_threadpool(self._answer, asked)
        except Exception as error:  # noqa: BLE001 - the host stays up whatever one request does to it
            self._trouble(error)
            return _line("Something went wrong here. Try again.", 500)

    async def _body(self, request: Request) -> bytes | None:
        """The whole body, or None where it is too large; no more is held than may be taken.

        A little more is heard out, since who still speaks does not hear the answer.
        """
        most = self._manners.largest
        length = request.headers.get("content-length", "0")
        if not length.isdecimal() or int(length[:12]) > HEARD_OUT * most:
            return None
        body, heard = bytearray(), 0
        async for piece in request.stream():
            heard += len(piece)
            if heard > HEARD_OUT * most:
                return None
            if heard <= most:
                body += piece
        return bytes(body) if heard <= most else None


def _peer(request: Request) -> str:
    return request.client.host if request.client else ""


def _line(text: str, status: int) -> Answer:
    return Answer(f"{text}\n".encode(), TEXT, status)
