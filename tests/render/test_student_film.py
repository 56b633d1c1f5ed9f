"""A film on its page: all that it says stands there as text."""

from dataclasses import replace

from builder.model.film import Cue, Film, FilmFile, Track
from builder.render.maker import maker
from builder.render.student_film import film_part
from tests.render.filmed import NAME, filmed
from tests.render.sample_site import one, parsed, said
from tests.render.samples import course

AT = "lessons/phases.md"
FILM = Film(
    "drill",
    (FilmFile("media/drill.mp4", 61_000, "AVC", 640, 360), FilmFile("media/drill.WEBM", 61_000, "VP9")),
    Track("media/drill.vtt", (Cue(0, 1500, "A < B\nsaid twice", 3, (("line", "0"), ("align", "start"))),)),
    Track("media/drill.chapters.vtt", (Cue(0, 61_000, "All of it", 3),)),
)


def test_the_player_has_every_file_and_the_browser_its_own_controls() -> None:
    """Each with its type, from where the lesson lies; a way to the file for what plays none."""
    tree = parsed(film_part(maker(course()), AT, FILM))
    video = one(tree, "video")
    assert video.has_attr("controls")
    assert (video["width"], video["height"], video["aria-label"]) == ("640", "360", "Drill")
    assert [(node["src"], node["type"]) for node in tree.select("source")] == [
        ("../media/drill.mp4", "video/mp4"),
        ("../media/drill.WEBM", "video/webm"),
    ]
    assert one(tree, "video a")["href"] == "../media/drill.mp4"
    assert said(one(tree, "figcaption")) == "Drill Film, 1:01"


def test_words_and_chapters_are_lists_with_times() -> None:
    """Readable without a script, and exact to the thousandth for one; where a caption stands goes with it."""
    tree = parsed(film_part(maker(course()), AT, FILM))
    line, chapter = one(tree, ".lines > li"), one(tree, ".chapters > li")
    assert (line["data-start"], line["data-end"], line["data-settings"]) == (
        "0",
        "1500",
        "line:0 align:start",
    )
    assert one(line, "span").text == "A < B\nsaid twice"
    assert (said(chapter), chapter["data-end"]) == ("All of it 0:00", "61000")


def test_a_film_without_words_still_plays() -> None:
    """In a preview, while its captions are still to be written."""
    tree = parsed(film_part(maker(course()), AT, replace(FILM, captions=None, chapters=None)))
    assert tree.select("video")
    assert tree.select("ol") == []


def test_nothing_but_words_is_found_by_searching() -> None:
    """Times, hints and the player are left out of the index."""
    film = filmed().films[NAME]
    tree = parsed(film_part(maker(filmed()), AT, film))
    for node in tree.select("[data-search-exclude]"):
        node.decompose()
    captions = film.captions
    assert captions is not None
    assert all(cue.text in said(tree) for cue in captions.cues)
    assert "0:0" not in said(tree)
