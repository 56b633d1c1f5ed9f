"""The shelf: exactly the files that were built, and no way round them."""

import gzip
import shutil
from pathlib import Path

import pytest

from builder.doors.serve import Answer, Asked
from builder.host.shelf import SCRIPT, Shelf, with_script
from tests.render.sample_site import built

TOLD = '{"class": "spring & \\"more\\""}'


def got(shelf: Shelf, path: str, **headers: str) -> Answer:
    """What a path gives."""
    return shelf.answer(Asked("GET", path, headers={k.replace("_", "-"): v for k, v in headers.items()}))


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """A small site, with what must not be reached around it and in it."""
    publish = tmp_path / "out" / "publish"
    (publish / "tests").mkdir(parents=True)
    (tmp_path / "out" / "private").mkdir()
    (tmp_path / "out" / "private" / "key.html").write_text("<head></head>key", encoding="utf-8")
    (publish / "index.html").write_text("<head></head>start", encoding="utf-8")
    (publish / "tests" / "final.html").write_text('<head></head><i id="test-data">', encoding="utf-8")
    (publish / "film.mp4").write_bytes(b"film")
    (publish / ".hidden.html").write_text("hidden", encoding="utf-8")
    (publish / ".git").mkdir()
    (publish / ".git" / "config").write_text("hidden", encoding="utf-8")
    (publish / "link.html").symlink_to(tmp_path / "out" / "private" / "key.html")
    (publish / "way").symlink_to(tmp_path / "out" / "private", target_is_directory=True)
    return publish


@pytest.mark.parametrize(
    "path",
    [
        "",
        "/",
        "/tests",
        "/tests/",
        "/nothing.html",
        "/INDEX.html/",
        "/../private/key.html",
        "/tests/../index.html",
        "/tests/../../private/key.html",
        "//index.html",
        "/./index.html",
        "/..\\private\\key.html",
        "/%2e%2e/private/key.html",
        "/index.html\x00",
        "/index.html ",
        "/.hidden.html",
        "/.git/config",
        "/link.html",
        "/way/key.html",
        "/index.html/..",
        "C:/index.html",
        "index.html",
    ],
)
def test_there_is_no_other_way(site: Path, path: str) -> None:
    """A folder, a step up, a link, what is hidden and what is odd are all nothing."""
    assert got(Shelf(site, TOLD), path).status == 404


def test_every_page_gets_the_script_before_its_own() -> None:
    """Once, in its head, before any other; a page of a test is told apart; nothing built is changed."""
    shelf = Shelf(built(), TOLD)
    before = {path: path.read_bytes() for path in built().rglob("*.html")}
    for path, data in before.items():
        page = got(shelf, f"/{path.relative_to(built()).as_posix()}").body.decode("utf-8")
        head = page.partition("</head>")[0]
        assert head.count(f'<script src="{SCRIPT}"') == 1
        assert page.index(SCRIPT) == page.index("<script src=") + len('<script src="')
        assert ("data-test>" in head) is (b'id="test-data"' in data)
    assert {path: path.read_bytes() for path in before} == before


def test_what_the_script_is_told_cannot_leave_its_place() -> None:
    """The name of a class is a value and never markup."""
    page = with_script(b"<head></head>", '{"class": "\'><b>"}').decode()
    assert "<b>" not in page
    assert with_script(b"no head", TOLD) == b"no head"


def test_texts_are_packed_for_who_asks(site: Path) -> None:
    """The same bytes, smaller on the way; a phone that has them is told so and sent nothing."""
    shelf = Shelf(site, TOLD)
    plain = got(shelf, "/index.html")
    packed = got(shelf, "/index.html", accept_encoding="gzip, deflate")
    assert gzip.decompress(packed.body) == plain.body
    assert packed.headers["Content-Encoding"] == "gzip"
    assert packed.headers["Vary"] == "Accept-Encoding"
    known = got(shelf, "/index.html", if_none_match=plain.headers["ETag"], accept_encoding="gzip")
    assert (known.status, known.body) == (304, b"")


def test_a_film_is_sent_as_the_file_it_is(site: Path) -> None:
    """So that a part of it can be asked for."""
    film = got(Shelf(site, TOLD), "/film.mp4")
    assert (film.kind, film.file) == ("video/mp4", site / "film.mp4")


def test_another_build_takes_its_place_at_once(site: Path) -> None:
    """As `build` swaps it in, while the host runs; between the two there is nothing, and no error."""
    shelf = Shelf(site, TOLD)
    assert got(shelf, "/film.mp4").status == 200
    shutil.move(site, site.with_name("old"))
    assert got(shelf, "/index.html").status == 404
    site.mkdir()
    (site / "index.html").write_text("<head></head>anew", encoding="utf-8")
    assert b"anew" in got(shelf, "/index.html").body
    assert got(shelf, "/film.mp4").status == 404
