"""An answer as it is sent: whole, or the piece of a file that a player asks for."""

import asyncio
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from starlette.types import Message, Receive, Scope, Send

from builder.doors.serve.answer import Answer
from builder.doors.serve.respond import respond

HEADERS = {"Cache-Control": "no-store"}


def sent(answer: Answer, *asked: tuple[bytes, bytes]) -> tuple[int, dict[str, str], bytes]:
    """Status, headers and body of an answer to a request with these headers."""
    messages: list[Message] = []

    async def receive() -> Message:
        await asyncio.sleep(60)  # whoever asks stays until all is sent
        return {"type": "http.disconnect"}

    async def send(message: Message) -> None:
        messages.append(message)

    scope: Scope = {"type": "http", "method": "GET", "headers": list(asked), "extensions": {}}
    with ThreadPoolExecutor(1) as aside:  # a browser of other tests may hold this thread's loop
        aside.submit(lambda: asyncio.run(_sending(answer, scope, receive, send))).result()
    headers = {name.decode(): value.decode() for name, value in messages[0]["headers"]}
    return messages[0]["status"], headers, b"".join(one.get("body", b"") for one in messages[1:])


async def _sending(answer: Answer, scope: Scope, receive: Receive, send: Send) -> None:
    await respond(answer, HEADERS)(scope, receive, send)


def test_bytes_are_sent_as_they_are() -> None:
    """With the headers of the server, unless the answer says otherwise."""
    status, headers, body = sent(Answer(b"a", status=404, headers={"Cache-Control": "private"}))
    assert (status, headers["cache-control"], body) == (404, "private", b"a")
    assert headers["content-type"] == "text/html; charset=utf-8"


def test_a_player_gets_the_piece_of_a_film_that_it_asks_for(tmp_path: Path) -> None:
    """Without that nobody could jump in it; the guarding headers stand on every piece."""
    film = tmp_path / "film.webm"
    film.write_bytes(bytes(range(100)))
    answer = Answer(b"", "video/webm", file=film)
    status, headers, body = sent(answer)
    assert (status, body, headers["accept-ranges"]) == (200, film.read_bytes(), "bytes")
    status, headers, body = sent(answer, (b"range", b"bytes=40-49"))
    assert (status, body) == (206, bytes(range(40, 50)))
    assert (headers["content-range"], headers["cache-control"]) == ("bytes 40-49/100", "no-store")
