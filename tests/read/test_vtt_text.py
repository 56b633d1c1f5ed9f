"""The words of a cue, and what is no mark."""

import pytest

from builder.read.vtt_text import plain_text, wrong_markup


@pytest.mark.parametrize(
    ("written", "words"),
    [
        ("A <i>pad</i>, <b.loud>cut</b>.", "A pad, cut."),
        ("<v Isaura>Look again.", "Isaura: Look again."),
        ("<v.first Isaura Penhallow>Look.</v>\n<v Zoë>Why?", "Isaura Penhallow: Look.\nZoë: Why?"),
        ("one <00:01.500>two<01:00:02.000> three", "one two three"),
        ("<lang fr>Doucement</lang>, <c>slowly</c>", "Doucement, slowly"),
        ("<ruby>a<rt>b</rt></ruby>", "ab"),
        ("3 &lt; 4 &amp; 4 &gt; 3&nbsp;!", "3 < 4 & 4 > 3 !"),
        ("&lt;b&gt;", "<b>"),
        ("  A   pad \n \n over  it ", "A pad\nover it"),
        ("", ""),
    ],
)
def test_marks_are_taken_out_and_words_kept(written: str, words: str) -> None:
    """Whatever WebVTT may hold, line by line."""
    assert plain_text(written) == words
    assert [one for line in written.split("\n") for one in wrong_markup(line)] == []


@pytest.mark.parametrize("line", ["a < b", "<font color=red>x</font>", "<", "<00:61.000>", "a <3"])
def test_what_begins_no_mark_is_told(line: str) -> None:
    """Browsers would leave out the words behind it."""
    assert len(list(wrong_markup(line))) == 1
