"""A server on a reserved socket, run until the person or a call ends it."""

from __future__ import annotations

import socket
from typing import Any

import uvicorn

QUIET: dict[str, Any] = {
    "log_config": None,
    "access_log": False,
    "lifespan": "off",
    "ws": "none",
    "server_header": False,
    "timeout_graceful_shutdown": 2,
}


class Running:
    """Runs an application; `more` are settings of uvicorn beyond those that every server of ours has."""

    def __init__(self, app: Any, **more: Any) -> None:  # noqa: ANN401 - what ASGI calls an application
        self._server = uvicorn.Server(uvicorn.Config(app, **QUIET, **more))

    def run(self, taken: socket.socket) -> None:
        """Serve on a reserved socket until the person or `stop` ends it."""
        try:
            self._server.run(sockets=[taken])
        except KeyboardInterrupt:
            return
        finally:
            taken.close()

    def stop(self) -> None:
        """End serving soon."""
        self._server.should_exit = True
