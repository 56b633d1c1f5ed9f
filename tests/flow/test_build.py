"""Building: two outputs under different parents, the same bytes twice, and nothing that gives a key away."""

from pathlib import Path

import pytest

from builder.assess.papers import papers_and_keys
from builder.check.leaks import Search
from builder.diagnostic import Diagnostic
from builder.fault import Fault
from builder.flow import build as flow
from builder.flow.build import KeyInPublished, build, read_secret, refuse_keys
from builder.flow.crew import Crew
from builder.flow.opened import open_course
from builder.place import Place
from tests.demo.built import COURSE, built_again, demo, opened
from tests.demo.small import small, small_course


def files(folder: Path) -> dict[str, bytes]:
    """Every file below a folder by its name."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()
    }


def test_students_and_instructor_are_apart() -> None:
    """Keys, papers and the instructor's site lie under `private`, and nothing of them under `publish`."""
    out, _ = demo()
    assert (out / "publish" / "index.html").is_file()
    assert (out / "private" / "instructor" / "index.html").is_file()
    assert {path.parent.name for path in (out / "private").rglob("final-*.json")} == {"keys", "papers"}
    assert not [name for name in files(out / "publish") if "key" in Path(name).stem or "private" in name]


def test_the_secret_is_in_neither_site() -> None:
    """The private secret of the versions never leaves its file."""
    out, _ = demo()
    secret = (COURSE / "private" / "draw_secret").read_bytes().strip()
    assert not [name for name, data in files(out).items() if secret in data]


def test_the_same_course_gives_the_same_bytes() -> None:
    """Two builds in two folders differ in nothing, sites, papers and keys alike."""
    first, second = files(demo()[0]), files(built_again())
    differing = [name for name, data in second.items() if first.get(name) != data]
    missing = first.keys() - second.keys()
    assert differing == []
    assert {name.split("/")[1] for name in missing} == {"classes", "records.db"}


def test_a_course_with_errors_is_not_built(tmp_path: Path) -> None:
    """The site that is there stays as it was."""
    copy = small_course(tmp_path / "course")
    case = copy / "cases" / "unicycle_thigh.yml"
    case.write_text(
        case.read_text(encoding="utf-8").replace("phase: acute", "phase: late_repair"), encoding="utf-8"
    )
    (tmp_path / "out" / "publish").mkdir(parents=True)
    (tmp_path / "out" / "publish" / "index.html").write_text("before", encoding="utf-8")
    with pytest.raises(Fault, match="errors to fix"):
        build(open_course(copy), copy, tmp_path / "out")
    assert files(tmp_path / "out") == {"publish/index.html": b"before"}


def test_a_leak_stops_the_build_and_leaves_what_was_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whatever the search finds is named, and neither site is replaced."""
    leak = Diagnostic("key_shown", "error", Place("tests/final-a.html"), "A reason is in it.", "Take it out.")
    monkeypatch.setattr(flow, "leaks_in", lambda *_: [leak])
    (tmp_path / "publish").mkdir()
    (tmp_path / "publish" / "index.html").write_text("before", encoding="utf-8")
    with pytest.raises(KeyInPublished, match=r"tests/final-a\.html: A reason is in it\."):
        build(opened(), COURSE, tmp_path)
    assert files(tmp_path) == {"publish/index.html": b"before"}


def test_a_missing_secret_is_made_once(tmp_path: Path) -> None:
    """A new course gets a secret of 32 bytes, and keeps it."""
    made = read_secret(tmp_path)
    assert len(made) == 32
    assert read_secret(tmp_path) == made


def test_a_damaged_secret_is_a_fault(tmp_path: Path) -> None:
    """A secret that is not what was written is never replaced in silence."""
    path = tmp_path / "private" / "draw_secret"
    path.parent.mkdir()
    path.write_text("not hex", encoding="utf-8")
    with pytest.raises(Fault, match="back-up"):
        read_secret(tmp_path)
    assert path.read_text(encoding="utf-8") == "not hex"


def test_a_picture_stands_beside_the_page_that_shows_it(tmp_path: Path) -> None:
    """A file that a lesson shows is copied as it is; one that nothing shows stays in the folder."""
    folder = small_course(tmp_path / "course")
    for name in ("shown", "kept"):
        (folder / "media" / f"{name}.svg").write_text(f"<svg id='{name}'/>", encoding="utf-8")
    lesson = folder / "lessons" / "dose.md"
    lesson.write_text(
        lesson.read_text(encoding="utf-8") + "\n![A pad](../media/shown.svg)\n", encoding="utf-8"
    )
    build(open_course(folder), folder, tmp_path / "out")
    media = tmp_path / "out" / "publish" / "media"
    assert {path.name: path.read_text(encoding="utf-8") for path in media.glob("*.svg")} == {
        "shown.svg": "<svg id='shown'/>"
    }
    page = (tmp_path / "out" / "publish" / "lessons" / "dose.html").read_text(encoding="utf-8")
    assert '<img alt="A pad" src="../media/shown.svg"' in page


def test_a_film_stands_beside_its_page_and_its_words_on_it(tmp_path: Path) -> None:
    """The film is copied as it is; its captions are read off the page, whoever saves them anew."""
    folder = small_course(tmp_path / "course")
    build(open_course(folder), folder, tmp_path / "out")
    publish, film = tmp_path / "out" / "publish", "media/wrap_and_look.webm"
    assert (publish / film).read_bytes() == (folder / film).read_bytes()
    assert [path.name for path in (publish / "media").iterdir()] == ["wrap_and_look.webm"]
    captions = folder / "media" / "wrap_and_look.vtt"
    captions.write_text(captions.read_text(encoding="utf-8").replace("tumbler", "rider"), encoding="utf-8")
    build(open_course(folder), folder, tmp_path / "out")
    assert "A fresh bruise on a rider" in (publish / "lessons" / "dose.html").read_text(encoding="utf-8")


def test_a_caption_that_tells_of_a_tested_case_is_not_published(tmp_path: Path) -> None:
    """Captions are searched as any page; so is what a film says of itself."""
    folder = small_course(tmp_path / "course")
    opened = open_course(folder)
    course = opened.course
    assert course is not None
    tested = course.cases[course.file.tests[0].cases[0]]
    story = " ".join((tested.visits[0].story or "").split())
    captions = folder / "media" / "wrap_and_look.vtt"
    text = captions.read_text(encoding="utf-8")
    captions.write_text(text.replace("A fresh bruise on a tumbler's calf.", story), encoding="utf-8")
    with pytest.raises(KeyInPublished, match=r"lessons/dose\.html"):
        build(open_course(folder), folder, tmp_path / "out")
    captions.write_text(text, encoding="utf-8")
    with (folder / "media" / "wrap_and_look.webm").open("ab") as film:
        film.write(story.encode())
    with pytest.raises(KeyInPublished, match=r"media/wrap_and_look\.webm"):
        build(open_course(folder), folder, tmp_path / "out")


def test_a_large_film_is_not_read_whole(tmp_path: Path) -> None:
    """Eight thousand million bytes, which no memory here would hold, are searched at once."""
    course = open_course(small()).course
    assert course is not None
    (tmp_path / "media").mkdir()
    with (tmp_path / "media" / "long.MP4").open("wb") as film:
        film.truncate(8_000_000_000)
    refuse_keys(tmp_path, Search((), course))


@pytest.mark.parametrize("helpers", [0, 1])
def test_a_key_is_found_in_whichever_of_many_files(helpers: int, tmp_path: Path) -> None:
    """Searched in parts, here or by another process, every leak is told, in the order of the files."""
    opened = open_course(small())
    course = opened.course
    assert course is not None
    rings = [ring for _, ring in papers_and_keys(course, opened.judged, b"a secret of this test alone")]
    for number in range(160):
        said = rings[0].key_edition if number in (7, 86, 151) else "nothing"
        (tmp_path / f"p{number:03}.html").write_text(f"<p>{said}</p>", encoding="utf-8")
    with Crew(helpers) as crew, pytest.raises(KeyInPublished) as caught:
        refuse_keys(tmp_path, Search(rings, course), frozenset({"p086.html"}), crew)
    assert [leak.place.file for leak in caught.value.leaks] == ["publish/p007.html", "publish/p151.html"]
