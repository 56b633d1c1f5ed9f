"""How a published file reads to whoever looks closely."""

import base64
import gzip

import pytest

from builder.check.leak.reading import Published, published, words

TEXT = "The swelling rises: wait a day."


@pytest.mark.parametrize(
    "written",
    [
        "<p>The swelling rises: wait a day.</p>",
        "<p>The <b>swell</b>ing\n rises:\twait&nbsp;a day.</p>",
        "<!-- The swelling rises: wait a day. -->",
        '<p data-why="The swelling rises: wait a day.">',
        '{"why": "The \\u0073welling rises: wait a day."}',
        '{"why": "\\u003cp\\u003eThe swelling\\nrises:\\u003c/p\\u003e wait a day."}',
        "var why = 'THE SWELLING RISES — wait a day'.toLowerCase()".replace("—", "-"),
        "The&#32;swelling &#x72;ises: wait a day.",
    ],
)
def test_a_text_is_read_however_it_is_written(written: str) -> None:
    """Tags, line ends, entities, escapes and capitals do not hide a text."""
    assert published("a.html", written.encode()).says(words(TEXT))


@pytest.mark.parametrize("written", ["The swelling rises", "The swelling rises, so wait a day.", "swelling"])
def test_other_texts_are_not_it(written: str) -> None:
    """A part of the text, or the text with a word between, is not the text."""
    assert not published("a.html", written.encode()).says(words(TEXT))


def test_a_packed_file_is_unpacked() -> None:
    """What is zipped is read like any other file."""
    assert published("sitemap.xml.gz", gzip.compress(TEXT.encode())).says(words(TEXT))


def test_an_encoded_text_is_decoded() -> None:
    """Base64 hides nothing."""
    encoded = base64.b64encode(TEXT.encode()).decode()
    assert published("a.js", f"var k='{encoded}'".encode()).says(words(TEXT))


def test_a_long_word_that_decodes_to_nothing_is_left() -> None:
    """What looks packed and is not stays as it is."""
    assert published("a.js", b"/" * 40).text == "/" * 40


def test_bytes_that_are_no_text_are_passed_over() -> None:
    """A picture is read as far as it is text."""
    assert published("a.png", b"\x89PNG\xff\xfe" + TEXT.encode()).says(words(TEXT))


def test_the_line_of_a_piece_is_found() -> None:
    """A leak is placed at its line, or at the first where it is written otherwise."""
    file = Published("a.html", "one\ntwo\nThe Secret\n")
    assert (file.line_of("the secret"), file.line_of("elsewhere")) == (3, 1)


def test_words_are_told_apart_by_anything_else() -> None:
    """Only letters, figures and the underscore make words."""
    assert words("It's 2½ times, co_05!") == " it s 2½ times co_05 ".encode()
