"""What is answered to each address: pages as a build writes them, and nothing from anywhere else."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from builder.doors.cache import NoCache
from builder.doors.site import build_site
from builder.flow.live import Live, Shown
from builder.preview.pages import NOTICES, SIDES, Pages
from builder.preview.panel import END
from tests.demo.small import small


@pytest.fixture(scope="module")
def live() -> Live:
    """The small demonstration, held open."""
    course = Live(small(), NoCache())
    course.refresh()
    return course


@pytest.fixture(scope="module")
def pages(live: Live) -> Iterator[Pages]:
    """Its answers."""
    made = Pages(live)
    yield made
    made.close()


def test_every_page_is_the_built_one_with_the_panel(live: Live, pages: Pages, tmp_path: Path) -> None:
    """Byte for byte around it; assets and the search index are the built ones."""
    assert live.shown.plans is not None
    for side, plan in zip(SIDES, live.shown.plans, strict=True):
        build_site(plan, tmp_path / side)
        for path in (one for one in (tmp_path / side).rglob("*") if one.is_file()):
            name, data = path.relative_to(tmp_path / side).as_posix(), path.read_bytes()
            answer = pages.answer(f"/{side}/{name}")
            assert answer.status == 200
            if not name.endswith(".html"):
                assert answer.body == data
                continue
            before, end, after = data.rpartition(END)
            assert answer.body.startswith(before)
            assert answer.body.endswith(end + after)
            assert b"caseloom-panel" in answer.body
            assert b"caseloom-panel" not in data


def test_the_way_in_and_the_way_across(pages: Pages) -> None:
    """The bare address leads to the students' side; a case leads to itself on the other side."""
    assert pages.answer("/").headers["Location"] == "/students/index.html"
    assert pages.answer("/students").headers["Location"] == "/students/index.html"
    case = pages.answer("/students/cases/stilt-ankle.html").body
    assert b'href="/instructor/cases/stilt-ankle.html"' in case
    card = pages.answer("/students/cards/friction.html").body
    assert b'href="/instructor/index.html"' in card


def test_a_page_that_is_gone_says_so_and_keeps_listening(pages: Pages) -> None:
    """It comes back by itself."""
    gone = pages.answer("/students/cases/nobody.html")
    assert gone.status == 404
    assert b"no longer, in the course" in gone.body
    assert b"panel.js" in gone.body


@pytest.mark.parametrize(
    "path",
    [
        "/nowhere",
        "/students/../course.yml",
        "/students/assets/none.js",
        "/students//etc/passwd",
        "/-/",
        "/-/panel.html",
        "/-/../pages.py",
        "/private/draw_secret",
        "/students/course.yml",
    ],
)
def test_nothing_else_can_be_asked_for(pages: Pages, path: str) -> None:
    """Neither files of the course nor of the tool."""
    assert pages.answer(path).status == 404


def test_the_panel_brings_its_look(pages: Pages) -> None:
    """And knows where changes are told."""
    assert NOTICES.encode() in pages.answer("/-/panel.js").body
    assert pages.answer("/-/panel.css").kind.startswith("text/css")


def test_before_the_first_good_state_the_faults_are_the_page() -> None:
    """There is nothing else to see."""
    course = Live(small(), NoCache())
    course.shown = Shown(version=1)
    answer = Pages(course).answer("/students/index.html")
    assert answer.status == 503
    assert b"cannot be shown yet" in answer.body
