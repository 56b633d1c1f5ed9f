"""Serves answers to this machine alone, and tells open pages when to load again."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Callable
from dataclasses import dataclass

from starlette.applications import Starlette
from starlette.concurrency import run_in_threadpool
from starlette.middleware import Middleware
from starlette.middleware.trustedhost import TrustedHostMiddleware
from starlette.requests import Request
from starlette.responses import Response, StreamingResponse
from starlette.routing import Route

from builder.doors.serve.answer import Answer
from builder.doors.serve.respond import respond
from builder.doors.serve.running import Running
from builder.doors.serve.sockets import LOOPBACK

NAMES = [LOOPBACK, "localhost"]
LOOK_AGAIN = 0.03  # seconds between two looks at whether there is something new
KEEP_ALIVE = 10.0
GUARDED = {
    "Cache-Control": "no-store",
    "Content-Security-Policy": (
        "default-src 'self'; script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; "
        "img-src 'self' data: blob:; frame-ancestors 'none'; form-action 'none'; base-uri 'none'"
    ),
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
}


@dataclass(frozen=True)
class Served:
    """What is served: an answer to every path, a number that rises with each change, where it is told."""

    answer: Callable[[str], Answer]
    version: Callable[[], int]
    notices: str


class Server(Running):
    """Serves until it is asked to stop; the page of another site can neither read nor write here."""

    def __init__(self, served: Served) -> None:
        self._served = served
        super().__init__(self.app())

    def app(self) -> Starlette:
        """All that is served; only looking is allowed, and only under this machine's own names."""
        routes = [Route(self._served.notices, self._notify), Route("/{path:path}", self._answer)]
        guard = Middleware(TrustedHostMiddleware, allowed_hosts=NAMES, www_redirect=False)
        return Starlette(routes=routes, middleware=[guard])

    async def _answer(self, request: Request) -> Response:
        found = await run_in_threadpool(self._served.answer, request.url.path)
        return respond(found, GUARDED)

    async def _notify(self, request: Request) -> Response:
        return StreamingResponse(self._news(request), headers=GUARDED, media_type="text/event-stream")

    async def _news(self, request: Request) -> AsyncIterator[str]:
        """The version, told at once and on every change; a line now and then keeps the way open."""
        told, quiet = -1, 0.0
        while not self._server.should_exit and not await request.is_disconnected():
            version = self._served.version()
            if version != told:
                told, quiet = version, 0.0
                yield f"data: {version}\n\n"
            elif quiet > KEEP_ALIVE:
                quiet = 0.0
                yield ": still here\n\n"
            await asyncio.sleep(LOOK_AGAIN)
            quiet += LOOK_AGAIN
