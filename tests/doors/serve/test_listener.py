"""A listener answers only under its own name, only to its own pages, and never more than it should."""

import json
from pathlib import Path

import pytest

from builder.doors.serve import Answer, Asked
from tests.doors.serve.asking import listening


def echo(asked: Asked) -> Answer:
    """Says what was asked."""
    if asked.path == "/trouble":
        raise ValueError("a secret of the machine")
    told = [asked.method, asked.path, asked.query, asked.body.decode(), asked.peer, asked.cookie("key")]
    return Answer(json.dumps(told).encode(), "application/json")


def test_what_is_asked_arrives_whole() -> None:
    """Method, path, query, body, address and cookie."""
    with listening(echo) as place:
        assert json.loads(place.get("/a%20b?c=d", cookie="x=1; key=k").body) == [
            *("GET", "/a b", {"c": "d"}, "", "127.0.0.1", "k"),
        ]
        assert json.loads(place.post("/in", b"{}").body) == ["POST", "/in", {}, "{}", "127.0.0.1", ""]
        assert place.get("/", "HEAD").body == b""


@pytest.mark.parametrize("host", ["evil.example", "localhost", "127.0.0.1", "", "127.0.0.1:1", "192.168.1.7"])
def test_another_name_is_not_answered(host: str) -> None:
    """A name that an attacker lets point here gets nothing, whatever is asked."""
    with listening(echo) as place:
        assert place.get("/", host=host).status == 421
        assert place.post("/in", b"{}", host=host).status == 421


@pytest.mark.parametrize(
    ("headers", "status"),
    [
        ({"Origin": "http://evil.example"}, 403),
        ({"Origin": "null"}, 403),
        ({"Origin": ""}, 403),
        ({"Content_Type": "text/plain"}, 415),
        ({"Content_Type": "application/x-www-form-urlencoded"}, 415),
        ({"Content_Type": "application/json; charset=utf-8"}, 200),
    ],
)
def test_only_its_own_pages_may_send(headers: dict[str, str], status: int) -> None:
    """The page of another site can not, and no form can."""
    with listening(echo) as place:
        assert place.post("/in", b"{}", **headers).status == status
        assert place.ask("POST", "/in", b"{}", {"Content-Type": "application/json"}).status == 403


def test_nothing_else_is_done_here() -> None:
    """Neither the ways to write nor a question before them."""
    with listening(echo) as place:
        for method in ("PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT"):
            assert place.get("/", method).status == 405, method


def test_no_more_is_taken_than_may_be() -> None:
    """By what it says of itself, by what it is, and unsaid in pieces."""
    with listening(echo, largest=100) as place:
        assert place.post("/in", b"x" * 100).status == 200
        assert place.post("/in", b"x" * 101).status == 413
        assert place.post("/in", b"x" * 300).status == 413
        head = f"POST /in HTTP/1.1\r\nHost: {place.host}\r\nOrigin: http://{place.host}\r\n"
        head += "Content-Type: application/json\r\n"
        lied = f"{head}Content-Length: {10**15}\r\n\r\n".encode()
        assert b" 413 " in place.raw(lied).splitlines()[0]
        pieces = f"{head}Transfer-Encoding: chunked\r\n\r\n".encode() + b"64\r\n" + b"x" * 100 + b"\r\n"
        assert b" 413 " in place.raw(pieces + b"64\r\n" + b"x" * 100 + b"\r\n0\r\n\r\n").splitlines()[0]


def test_who_asks_too_often_waits() -> None:
    """A burst, then no more."""
    with listening(echo, burst=5, a_second=0.001) as place:
        assert [place.get("/").status for _ in range(7)] == [200] * 5 + [429] * 2
        assert place.get("/").headers["Retry-After"] == "5"


def test_every_answer_is_shut() -> None:
    """Scripts and styles of its own alone, in no frame, read by no other site; refusals too."""
    with listening(echo) as place:
        for got in (place.get("/"), place.get("/", host="evil.example"), place.get("/", "PUT")):
            policy = got.headers["Content-Security-Policy"]
            assert "default-src 'none'" in policy
            assert "unsafe" not in policy
            assert got.headers["X-Content-Type-Options"] == "nosniff"
            assert got.headers["X-Frame-Options"] == "DENY"
            assert got.headers["Referrer-Policy"] == "no-referrer"
            assert got.headers["Access-Control-Allow-Origin"] is None
            assert got.headers["Server"] is None


def test_trouble_is_told_and_not_shown(capfd: pytest.CaptureFixture[str]) -> None:
    """Whoever asked hears that something went wrong, the host hears what, and it goes on."""
    with listening(echo) as place:
        got = place.get("/trouble")
        assert (got.status, b"secret" in got.body) == (500, False)
        assert [str(one) for one in place.troubles] == ["a secret of the machine"]
        assert place.get("/").status == 200
        assert place.raw(b"no such thing\r\n\r\n").startswith(b"HTTP/1.1 400")
    assert capfd.readouterr() == ("", "")


def test_a_file_is_sent_as_it_stands(tmp_path: Path) -> None:
    """Whole, or a part of it, as a film is asked for."""
    film = tmp_path / "film.mp4"
    film.write_bytes(bytes(range(256)))
    with listening(lambda _: Answer(b"", "video/mp4", file=film)) as place:
        assert place.get("/").body == film.read_bytes()
        part = place.get("/", Range="bytes=10-19")
        assert (part.status, part.body) == (206, bytes(range(10, 20)))
