"""The web door: this machine alone, looking alone, and nothing for the page of another site."""

from collections.abc import Iterator
from contextlib import ExitStack, closing, contextmanager
from dataclasses import dataclass
from email.message import Message
from http.client import HTTPConnection
from threading import Thread

from builder.doors.serve import LOOPBACK, Answer, Served, Server, elsewhere, reserve


class Clock:
    """A version that a test moves on."""

    now = 1


def answer(path: str) -> Answer:
    """A page that says where it is, and one that leads there."""
    return elsewhere("/there") if path == "/" else Answer(f"<p>{path}</p>".encode())


@contextmanager
def serving(clock: Clock) -> Iterator[int]:
    """A server in a thread; the port it serves on."""
    taken = reserve(0)
    port: int = taken.getsockname()[1]
    server = Server(Served(answer, lambda: clock.now, "/changes"))
    thread = Thread(target=server.run, args=(taken,))
    thread.start()
    try:
        yield port
    finally:
        server.stop()
        thread.join(20)
        assert not thread.is_alive()


@dataclass(frozen=True)
class Got:
    """What came back."""

    status: int
    headers: Message
    body: bytes


def asked(port: int, method: str, path: str, **headers: str) -> Got:
    """The whole answer to one request."""
    connection = HTTPConnection(LOOPBACK, port, timeout=20)
    connection.request(method, path, headers=headers)
    with closing(connection), connection.getresponse() as answered:
        return Got(answered.status, answered.headers, answered.read())


def test_only_looking_under_our_own_names_is_allowed() -> None:
    """A name that an attacker lets point here is refused, and so is every way to write."""
    with serving(Clock()) as port:
        page = asked(port, "GET", "/a%20b")
        assert (page.status, page.body) == (200, b"<p>/a b</p>")
        assert asked(port, "GET", "/a", Host=f"localhost:{port}").status == 200
        assert asked(port, "GET", "/", Host=f"{LOOPBACK}:{port}").headers["Location"] == "/there"
        for host in ("evil.example", f"evil.example:{port}", f"{LOOPBACK}.evil.example", ""):
            assert asked(port, "GET", "/a", Host=host).status == 400, host
        for method in ("POST", "PUT", "DELETE", "PATCH", "OPTIONS"):
            assert asked(port, method, "/a").status == 405, method


def test_no_other_site_may_hold_or_read_a_page() -> None:
    """Every answer says so, and is not kept by the browser."""
    with serving(Clock()) as port:
        page = asked(port, "GET", "/a").headers
    assert page["Cross-Origin-Resource-Policy"] == "same-origin"
    assert page["X-Frame-Options"] == "DENY"
    assert page["Access-Control-Allow-Origin"] is None
    assert page["Cache-Control"] == "no-store"
    assert "frame-ancestors 'none'" in page["Content-Security-Policy"]


def test_a_change_is_told_to_whoever_listens() -> None:
    """The version at once and every later one; an open line does not hold up the end."""
    clock = Clock()
    with ExitStack() as stack:
        port = stack.enter_context(serving(clock))
        connection = stack.enter_context(closing(HTTPConnection(LOOPBACK, port, timeout=20)))
        connection.request("GET", "/changes")
        news = stack.enter_context(connection.getresponse())
        assert news.headers["Content-Type"].startswith("text/event-stream")
        assert [news.readline(), news.readline()] == [b"data: 1\n", b"\n"]
        clock.now = 2
        assert news.readline() == b"data: 2\n"
