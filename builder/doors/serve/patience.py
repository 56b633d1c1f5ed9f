"""Connections that ask for nothing are not held for ever, and no one address holds them all."""

from __future__ import annotations

import asyncio
from collections import Counter
from typing import Any

from uvicorn.protocols.http.h11_impl import H11Protocol

LOOK = 8.0  # seconds between two looks; a request that is not whole after two of them is given up
MOST = 64  # connections of one address; a browser opens six
_held: Counter[str] = Counter()


class Patient(H11Protocol):
    """The server's way of speaking, with an end to its patience."""

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]  # as the server's own
        """Count whoever comes, and turn away one who holds too many."""
        super().connection_made(transport)
        self._peer = self.client[0] if self.client else ""
        self._waited = 0
        _held[self._peer] += 1
        self._next = self.loop.call_later(LOOK, self._look)
        if _held[self._peer] > MOST:
            transport.abort()

    def connection_lost(self, exc: Exception | None) -> None:
        """Forget whoever goes."""
        self._next.cancel()
        _held[self._peer] -= 1
        if _held[self._peer] <= 0:
            del _held[self._peer]
        super().connection_lost(exc)

    def _look(self) -> None:
        cycle: Any = self.cycle
        idle = cycle is None or cycle.response_complete
        self._waited = self._waited + 1 if idle and self.timeout_keep_alive_task is None else 0
        if self._waited > 1:
            self.transport.close()
        else:
            self._next = self.loop.call_later(LOOK, self._look)
