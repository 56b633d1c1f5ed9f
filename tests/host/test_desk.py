"""The instructor's pages: behind a key that opens once, on this machine, with everything in sight."""

import json
from pathlib import Path

import pytest

from builder.doors.serve import LOOPBACK, Answer, Asked
from tests.host.made import Host, codes, desk_of, made, sheet

POSTS = ("/open", "/shut")
GETS = ("/", "/state", "/counts", "/screen", "/nothing")


def got(host: Host, path: str, query: str = "", **headers: str) -> Answer:
    """What the instructor's browser gets."""
    key, _, value = query.partition("=")
    return host.own.answer(Asked("GET", path, {key: value} if key else {}, headers))


def posted(host: Host, path: str, data: object, key: dict[str, str]) -> Answer:
    """What a button of the page brings."""
    return host.own.answer(Asked("POST", path, headers=key, body=json.dumps(data).encode()))


def test_the_key_opens_once(tmp_path: Path) -> None:
    """It leads to the page without itself in the address, and gives a cookie to this site alone."""
    host = made(tmp_path)
    led = got(host, "/", f"key={host.own.key}")
    assert (led.status, led.headers["Location"]) == (307, "/")
    assert led.headers["Set-Cookie"].endswith("; HttpOnly; SameSite=Strict; Path=/")
    assert host.own.key not in led.headers["Set-Cookie"]
    again = got(host, "/", f"key={host.own.key}")
    assert (again.status, "Set-Cookie" in again.headers) == (403, False)
    assert b"opens once" in again.body


@pytest.mark.parametrize("cookie", ["", "caseloom_desk=", "caseloom_desk=guess", "other=1"])
def test_without_the_cookie_there_is_only_the_door(tmp_path: Path, cookie: str) -> None:
    """No page, no number, no button; a wrong key opens nothing and does not use up the right one."""
    host = made(tmp_path)
    for path in GETS:
        answer = got(host, path, cookie=cookie)
        assert answer.status == 403
        assert b"Vantornel" not in answer.body
    for path in POSTS:
        assert posted(host, path, {"address": LOOPBACK}, {"cookie": cookie}).status == 403
    assert got(host, "/", "key=wrong").status == 403
    assert host.entrance.way == ""
    assert got(host, "/", f"key={host.own.key}").status == 307


def test_everything_is_in_sight(tmp_path: Path) -> None:
    """People by name and where they stand, receipts, what is set aside; on the room's screen no names."""
    host = made(tmp_path)
    key = host.key()
    host.ask("/hand", sheet(codes()[0]))
    host.ask("/hand", b"odd")
    host.ask("/here", json.dumps({"code": codes()[1], "answered": 1, "of": 10}).encode())
    state = json.loads(got(host, "/state", **key).body)
    first, second = state["people"][:2]
    assert (first["name"], first["state"]) == ("Bea Vantornel", "handed")
    assert len(first["receipts"]) == 1
    assert second["text"] == "1 of 10 answered"
    assert {number for number, _ in state["counts"]} == {"2", "1", "6"}
    assert len(state["aside"]) == 1
    page = got(host, "/", **key)
    assert b"Bea Vantornel" in page.body
    for path in ("/screen", "/counts"):
        answer = got(host, path, **key)
        assert answer.status == 200
        assert not [one.name for one in host.desk.taught.participants if one.name.encode() in answer.body]


def test_the_instructor_opens_and_shuts_the_hall(tmp_path: Path) -> None:
    """On an address of this machine; another is refused in words, and odd requests do nothing."""
    host = made(tmp_path)
    key = host.key()
    assert (
        json.loads(posted(host, "/open", {"address": LOOPBACK}, key).body)["way"] == host.entrance.way != ""
    )
    shut = posted(host, "/shut", {}, key)
    assert json.loads(shut.body)["way"] == ""
    refused = posted(host, "/open", {"address": "203.0.113.9"}, key)
    assert refused.status == 409
    assert "no address 203.0.113.9" in json.loads(refused.body)["fault"]
    everything_odd: tuple[object, ...] = ([], {}, None, "x")
    for odd in everything_odd:
        assert posted(host, "/open", odd, key).status == 400
    assert posted(host, "/state", {}, key).status == 404
    assert host.own.answer(Asked("POST", "/open", headers=key, body=b"{")).status == 400


def test_the_bare_address_leads_where_the_screen_says(tmp_path: Path) -> None:
    """Whoever types it, rather than pointing a camera, arrives at the same page."""
    host = made(tmp_path)
    key = host.key()
    host.entrance.open(LOOPBACK)
    page = got(host, "/screen", "at=tests/final.html", **key).body.decode("utf-8")
    assert f"{host.entrance.way.rstrip('/')}<" in page
    assert "<svg" in page
    assert host.hall.answer(Asked("GET", "/")).headers["Location"] == "/tests/final.html"
    got(host, "/screen", "at=../private", **key)
    assert host.hall.answer(Asked("GET", "/")).headers["Location"] == "/tests/final.html"
    got(host, "/screen", "at=index.html", **key)
    assert host.hall.answer(Asked("GET", "/")).headers["Location"] == "/index.html"
    host.entrance.shut()
    assert "<svg" not in got(host, "/screen", **key).body.decode("utf-8")


def test_no_other_site_presses_a_button(tmp_path: Path) -> None:
    """Over the network: not without the name, not from another page, not by a form."""
    host = made(tmp_path)
    key = host.key()["cookie"]
    with desk_of(host) as place:
        assert place.get("/", cookie=key).status == 200
        assert place.get("/", cookie=key, host="evil.example").status == 421
        assert (
            place.post("/open", b'{"address": "127.0.0.1"}', cookie=key, Origin="http://evil.example").status
            == 403
        )
        assert place.post("/open", b"{}", cookie=key, Content_Type="text/plain").status == 415
        assert place.post("/shut", b"{}", cookie=key).status == 200
        assert place.troubles == []
    assert host.entrance.way == ""
