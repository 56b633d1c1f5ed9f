"""How long a lesson takes."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.model.film import Film, FilmFile
from builder.model.study import WORDS_A_MINUTE, Study, study_of, words_in
from tests.render.samples import course

SOURCES = {"sources", "references"}


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("", 0),
        ("Tissue heals in *phases*.", 4),
        ("## Two clocks\n\nAn injury is dated twice – by both.", 9),
        ("- **Pack:** up to 20 minutes\n- wrap", 6),
        ("<!-- a note to myself -->\nWords.\n", 1),
        ("[card glide]\n\n[flags]\n", 0),
        ("![A pad under a wrap](../media/pad.png) seen", 1),
        ("see [the second lesson](dose.md#cold)", 4),
        ('!!! warning "Ask before cold"\n    Hives?\n', 4),
        ("| Phase | Pain |\n| --- | --- |\n| acute | 0 |\n", 4),
        ("a <b>bold</b> word<br>more", 4),
        ("don't re-check", 2),
    ],
)
def test_words_are_those_that_are_read(text: str, count: int) -> None:
    """Markdown, notes, tags and pictures are none."""
    assert words_in(text) == count


def test_what_a_lesson_rests_on_is_not_studied() -> None:
    """A section of sources is left out with all below it, whatever its depth; the next section counts."""
    text = "one\n\n## Sources\n\ntwo three\n\n### Reviews\n\nfour\n\n## After\n\nfive\n"
    assert words_in(text, SOURCES) == 3
    assert words_in("# A\n\n### REFERENCES #\n\nb\n\n## C\n", SOURCES) == 2


@given(st.integers(0, 10**6), st.integers(0, 10**8), st.integers(0, 10**6), st.integers(0, 10**8))
def test_time_adds_up_exactly(words: int, film: int, more: int, longer: int) -> None:
    """Two lessons take as long as one after the other, and film counts one for one."""
    one, other = Study(words, film), Study(more, longer)
    assert (one + other).minutes() == one.minutes() + other.minutes()
    assert one.minutes() - Study(words).minutes() == Fraction(film, 60_000)
    assert Study(words).minutes(175) >= Study(words).minutes() >= Study(words).minutes(300)


def test_a_minute_of_words_is_a_minute() -> None:
    """At the published speed."""
    assert Study(WORDS_A_MINUTE).minutes() == 1
    assert Study(0, 90_000).film_minutes == Fraction(3, 2)


def test_a_lesson_is_its_words_and_its_films() -> None:
    """Films in a note, or that are not there, take no time."""
    film = Film("drill", (FilmFile("media/drill.webm", 30_000),))
    text = "A word.\n\n[film drill]\n\n[film none]\n\n<!--\n[film drill]\n-->\n\n## Sources\n\n- A book.\n"
    sample = replace(course(), lessons={"phases": text}, films={"drill": film})
    assert study_of(sample, "phases") == Study(2, 30_000)
    assert study_of(sample, "nothing") == Study()
