"""The look and the scripts that a site ships."""

import gzip
import re

from builder.render.assets import LOOK, SCRIPTS, assets, frame, with_kinds
from builder.render.instructor_mark import OWN

OF_ONE = (*OWN, "manual")
ALL = assets({}, SCRIPTS)


def test_own_style_and_script_stay_light() -> None:
    """All that the student site may load is together under 40 kB compressed."""
    public = {name: data for name, data in ALL.items() if name not in ("assets/room.js", "assets/typing.js")}
    assert sum(len(gzip.compress(data)) for data in public.values()) < 40_000


def test_pages_that_read_answers_share_the_kinds() -> None:
    """One file for all of them, before the script that uses it; no other page carries it."""
    assert with_kinds(("assets/test.js",)) == ("assets/kinds.js", "assets/test.js")
    assert with_kinds(["assets/film.js", "assets/lesson.js"])[0] == "assets/kinds.js"
    assert with_kinds(("assets/film.js",)) == ("assets/film.js",)


def test_nothing_names_an_outside_address() -> None:
    """No style, script or template reaches for another machine."""
    texts = [*(data.decode("utf-8") for data in ALL.values()), *frame().values()]
    addresses = {match for text in texts for match in re.findall(r"https?://[^\s\"']+", text)}
    assert addresses == {"http://www.w3.org/2000/svg"}


def test_scripts_are_classic() -> None:
    """No module and nothing fetched: pages must work from a folder."""
    for address in SCRIPTS:
        text = ALL[address].decode("utf-8")
        assert (
            re.search(r"^\s*(import|export)\s|\bfetch\(|XMLHttpRequest|new Worker", text, re.MULTILINE)
            is None
        )


def test_every_file_of_the_look_is_used() -> None:
    """A style sheet or script that lies in the folder is shipped, or is known to be of one side alone."""
    shipped = b"".join(ALL.values())
    globs = ("js/*.js", "css/*.css", "kinds/*/*.js", "kinds/*/*.css")
    parts = [path for glob in globs for path in LOOK.glob(glob) if path.stem not in OF_ONE]
    assert [path.name for path in parts if path.read_bytes() not in shipped] == []


def test_the_frame_is_keyed_by_template_name() -> None:
    """The names are those the site generator looks for."""
    assert {"main.html", "bar.html", "foot.html", "partials/javascripts/base.html"} <= frame().keys()
