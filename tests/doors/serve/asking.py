"""A listener in a thread, and ways to ask it that no browser would use."""

import socket
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from email.message import Message
from http.client import HTTPConnection
from threading import Thread

from builder.doors.serve import LOOPBACK, Answer, Asked, Listener, Manners, reserve

JSON = "application/json"


@dataclass(frozen=True)
class Got:
    """What came back."""

    status: int
    headers: Message
    body: bytes


@dataclass(frozen=True)
class Place:
    """Where a listener listens, and what went wrong in it."""

    port: int
    troubles: list[Exception]
    address: str = LOOPBACK

    @property
    def host(self) -> str:
        """Its one name."""
        return f"{self.address}:{self.port}"

    def get(self, path: str, method: str = "GET", **headers: str) -> Got:
        """Look at a path."""
        return self.ask(method, path, b"", headers)

    def post(self, path: str, body: bytes, **headers: str) -> Got:
        """Send something as a page of the listener would."""
        known = {"Origin": f"http://{self.host}", "Content-Type": JSON}
        return self.ask("POST", path, body, known | headers)

    def ask(self, method: str, path: str, body: bytes, headers: dict[str, str]) -> Got:
        """One request with exactly these headers; the path goes out as it is written."""
        connection = HTTPConnection(self.address, self.port, timeout=10)
        named = {name.replace("_", "-"): value for name, value in headers.items()}
        try:
            connection.request(method, path, body=body or None, headers=named)
            with connection.getresponse() as answered:
                return Got(answered.status, answered.headers, answered.read())
        finally:
            connection.close()

    def raw(self, data: bytes, wait: float = 20) -> bytes:
        """Whatever comes back to bytes of any kind, until the other side ends it."""
        with socket.create_connection((self.address, self.port), timeout=wait) as line:
            line.sendall(data)
            found = b""
            while piece := line.recv(65536):
                found += piece
            return found


@contextmanager
def listening(answer: Callable[[Asked], Answer], **manners: float) -> Iterator[Place]:
    """A listener that runs until the end of the block."""
    taken = reserve(0)
    place = Place(taken.getsockname()[1], [])
    listener = Listener(answer, Manners(frozenset({place.host}), **manners), place.troubles.append)  # type: ignore[arg-type]
    thread = Thread(target=listener.run, args=(taken,))
    thread.start()
    try:
        yield place
    finally:
        listener.stop()
        thread.join(20)
        assert not thread.is_alive()
