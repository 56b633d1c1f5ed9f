"""Chromium reads WebVTT by itself from a server: what we read of the same files is what it shows."""

from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread

import pytest

from builder.disk import shipped
from builder.read.vtt import read_track
from tests.browser.conftest import Visit

pytestmark = pytest.mark.browser

HEAD = "WEBVTT\n\n"
DEMO = (shipped("demo_course") / "media" / "wrap_and_look.vtt").read_text(encoding="utf-8")
SOUND = (
    DEMO,
    f"{HEAD}00:01.000 --> 00:02.500\nA pad.\n\n\nsecond\n01:00:03.000 -->\t01:00:04.050\nA wrap.\nOver it.\n",
    f"{HEAD}NOTE by hand\n\n00:01.000 --> 00:02.000 line:0 align:start\n3 &lt; 4 &amp; 4\n",
)
BROKEN = (
    f"{HEAD}00:01,000 --> 00:02,000\nA\n\n00:02.000 --> 00:03.000\nB\n",
    f"{HEAD}00:01 --> 00:02\nA\n\nwords alone\n\n00:02.000 --> 00:03.000\nB\n",
    f"{HEAD}00:61.000 --> 00:62.000\nA\n\n00:02.000 --> 00:03.000\nB\n",
)
PAGE = "<!doctype html><title>a</title><link rel=icon href=data:,>"
READ = """name => new Promise((done, fail) => {
    const video = document.createElement('video'), track = document.createElement('track');
    track.src = name;
    track.addEventListener('error', () => done(null));
    track.addEventListener('load', () => done(Array.from(track.track.cues).map(one =>
        [Math.round(one.startTime * 1000), Math.round(one.endTime * 1000), one.getCueAsHTML().textContent])));
    video.append(track);
    document.body.append(video);
    track.track.mode = 'hidden';
})"""


class _Quiet(SimpleHTTPRequestHandler):
    """Serves captions as what they are, without a line for each."""

    extensions_map = {**SimpleHTTPRequestHandler.extensions_map, ".vtt": "text/vtt"}  # noqa: RUF012 - as the class has it

    def log_message(self, *_: object) -> None:
        """Say nothing."""


@pytest.fixture(scope="module")
def served(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The address of every text as a file, and of an empty page."""
    root: Path = tmp_path_factory.mktemp("tracks")
    (root / "index.html").write_text(PAGE, encoding="utf-8")
    for number, text in enumerate((*SOUND, *BROKEN, DEMO.removeprefix("WEBVTT"))):
        (root / f"{number}.vtt").write_text(text, encoding="utf-8", newline="\n")
    with ThreadingHTTPServer(("127.0.0.1", 0), partial(_Quiet, directory=str(root))) as server:
        thread = Thread(target=server.serve_forever, daemon=True)
        thread.start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()
        thread.join()


@pytest.mark.parametrize("number", range(len(SOUND) + len(BROKEN)))
def test_we_read_the_cues_that_the_browser_shows(visit: Visit, served: str, number: int) -> None:
    """The same times and words; where we find a fault, it drops what we name, and shows the rest."""
    track, found = read_track((*SOUND, *BROKEN)[number], "media/a.vtt")
    assert bool(found) == (number >= len(SOUND))
    cues = visit(served).go("index.html").evaluate(READ, f"{number}.vtt")
    assert cues == [[one.start, one.end, one.text] for one in track.cues]


def test_without_its_first_word_the_browser_takes_none(visit: Visit, served: str) -> None:
    """As we say of such a file."""
    visitor = visit(served)
    assert visitor.go("index.html").evaluate(READ, f"{len(SOUND) + len(BROKEN)}.vtt") is None
    visitor.errors.clear()
