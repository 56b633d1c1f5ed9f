"""Key material in a finished site: each kind is found where it stands, a clean site is let through."""

import gzip
import json
from base64 import b64encode
from dataclasses import replace

import pytest

from builder.check.leaks import find_leaks
from tests.check.leak.site import COURSE, RING, RINGS, TEST, Site, site, with_text

ANSWER = next(one for one in RING.keys[0].answers if one.case and one.kind == "one")
RIGHT, WRONG = ANSWER.right[0], next(one for one in ANSWER.options if one not in ANSWER.right)
REASON = next(text for text in ANSWER.reasons.values() if "[" in text)
PAGE = "tests/final-a.html"


def leaks(files: Site) -> list[tuple[str, str]]:
    """File and message of everything found."""
    return [(one.place.file, one.message) for one in find_leaks(files, RINGS, COURSE)]


def test_a_clean_site_is_let_through() -> None:
    """Lessons, practice, scripts, search and papers as they should be hold nothing."""
    assert leaks(site()) == []


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("assets/test.js", json.dumps(REASON)),
        (PAGE, f"<!-- {REASON} -->"),
        ("lessons/first.html", "<p>Secret ending 1 of beta told afterwards.</p>"),
        ("search/search_index.js", '{"text": "Secret word on wire_walker 1."}'),
        ("cases/other.html", "<h1>Secret title of beta</h1>"),
        ("cards/cold.html", "<p>Secret visit 2 of wire_walker</p>"),
        ("assets/data.json", f'{{"keys": "{RING.key_edition}"}}'),
        ("assets/key.txt", b64encode(REASON.encode()).decode()),
        ("index.html", "<a href='cases/beta.html'>a case</a>"),
        ("index.html", '<div data-of="wire_walker">'),
        ("index.html", '<div id="wire-walker">'),
        ("cases/wire-walker.html", "<html></html>"),
        ("media/wire_walker.svg", "<svg/>"),
        ("media/board-of-wire-walker-2.svg", "<svg/>"),
        (f"media/{RIGHT}.svg", "<svg/>"),
        ("lessons/first.html", "<p>Everyday it hurts beta 1 times.</p>"),
        ("search/search_index.js", '{"text": "A pole hit wire_walker"}'),
        ("search/search_index.js", json.dumps({"id": ANSWER.question})),
        ("lessons/first.html", "<p>Secret ground of the order kind.</p>"),
        (PAGE, "<p>Secret ground of the match kind.</p>"),
        ("assets/test.js", "'It still bleeds.'"),
        ("lessons/first.html", "<p>Which is it, by panel, on a wet day?</p>"),
        ("index.html", "<a href='questions/asked-number.html'>a question</a>"),
        ("index.html", '<div data-of="asked_text">'),
        (PAGE, "<!-- drawn by the tool -->"),
        (PAGE, "<p>Because it helps.</p><p>It is so.</p>"),
        (PAGE, f'<script>{{"{ANSWER.question}":"{RIGHT}"}}</script>'),
        (PAGE, f'<i data-id="{RIGHT}" data-right="1"></i><i data-id="{WRONG}" data-right="0"></i>'),
    ],
)
def test_each_kind_of_leak_is_found_in_its_file(name: str, text: str) -> None:
    """Reasons, authors' words, editions, ids, addresses, search, comments and marks."""
    assert {file for file, _ in leaks(with_text(site(), name, text))} == {f"publish/{name}"}


def test_a_packed_leak_is_found() -> None:
    """A packed address book names a tested case as an open one does."""
    packed = gzip.compress(b"<loc>cases/beta.html</loc>")
    assert leaks(site() | {"sitemap.xml.gz": packed})


def test_a_single_word_in_a_file_name_is_no_id() -> None:
    """A case called `beta` does not forbid a picture called `beta-waves`."""
    assert leaks(site() | {"media/beta-waves.svg": b"<svg/>"}) == []


def test_every_place_is_reported() -> None:
    """All leaks are found at once, each with its line."""
    files = with_text(site(), "index.html", "\n\n<p>Secret title of beta</p>")
    files = with_text(files, "lessons/first.html", "<p>Secret title of wire_walker</p>")
    found = find_leaks(files, RINGS, COURSE)
    assert [(one.place.file, one.place.line) for one in found] == [
        ("publish/index.html", 3),
        ("publish/lessons/first.html", 1),
    ]
    assert all(one.level == "error" and one.remedy for one in found)


def test_a_case_that_a_lesson_tells_on_purpose_is_no_leak_of_ours() -> None:
    """A course that says a sentence in a lesson may publish it, even if a tested case says it too."""
    files = with_text(site(), "index.html", "<p>The hamstring lesson says that it hurts.</p>")
    assert leaks(files) == []


def test_a_course_without_tests_has_nothing_to_leak() -> None:
    """Without rings and pools every file passes."""
    bare = COURSE.file.model_copy(update={"tests": ()})
    assert find_leaks(site(), (), replace(COURSE, file=bare)) == []


def test_the_sample_draws_what_it_should() -> None:
    """The page under test asks two options and two phases, and one question of each kind."""
    assert [len(paper.questions) for paper in TEST.papers] == [11, 11]
