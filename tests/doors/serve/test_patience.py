"""Connections that never ask are ended, and one address cannot hold them all."""

import socket
import time
from contextlib import ExitStack

import pytest

from builder.doors.serve import LOOPBACK, Answer, patience
from tests.doors.serve.asking import listening


def page(_: object) -> Answer:
    """A page."""
    return Answer(b"here")


@pytest.mark.parametrize("begun", [b"", b"GET / HTTP/1.1\r\nHost:", b"GET / HTTP/1.1\r\nX-A: b\r\n"])
def test_half_a_request_is_given_up(monkeypatch: pytest.MonkeyPatch, begun: bytes) -> None:
    """Whoever says nothing, or never ends, is let go."""
    monkeypatch.setattr(patience, "LOOK", 0.1)
    with listening(page) as place:
        assert place.raw(begun, wait=10) == b""
        assert place.get("/").body == b"here"


def test_one_address_holds_only_so_many(monkeypatch: pytest.MonkeyPatch) -> None:
    """One more is turned away; when some go, there is room again."""
    monkeypatch.setattr(patience, "MOST", 3)
    with listening(page) as place:
        with ExitStack() as stack:
            for _ in range(3):
                line = stack.enter_context(socket.create_connection((LOOPBACK, place.port), timeout=10))
                line.sendall(b"GET")
            with pytest.raises(OSError, match=r".*"):
                place.get("/")
        assert eventually(lambda: place.get("/").body == b"here")


def eventually(holds: object) -> bool:
    """Whether it comes to hold within a second or two; errors on the way are waited out."""
    for _ in range(20):
        try:
            if callable(holds) and holds():
                return True
        except OSError:
            pass
        time.sleep(0.05)
    return False
