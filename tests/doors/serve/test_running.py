"""A server that runs until it is ended."""

from threading import Thread
from urllib.request import urlopen

from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import PlainTextResponse
from starlette.routing import Route

from builder.doors.serve.running import Running
from builder.doors.serve.sockets import LOOPBACK, reserve


async def hello(_request: Request) -> PlainTextResponse:
    """One word."""
    return PlainTextResponse("here")


def test_it_serves_until_it_is_stopped_and_lets_the_port_go() -> None:
    """The socket taken beforehand is the one that answers; afterwards another can have its port."""
    taken = reserve(0)
    port = taken.getsockname()[1]
    running = Running(Starlette(routes=[Route("/", hello)]))
    thread = Thread(target=running.run, args=(taken,), daemon=True)
    thread.start()
    with urlopen(f"http://{LOOPBACK}:{port}/", timeout=20) as answer:
        assert answer.read() == b"here"
    running.stop()
    thread.join(20)
    assert not thread.is_alive()
    reserve(port).close()
