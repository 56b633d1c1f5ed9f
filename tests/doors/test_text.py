"""Text from bytes: what is UTF-8 is taken, what is not is placed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.doors.text import LIMIT, REPLACED, decode, is_odd
from builder.place import Place


def told(data: bytes) -> list[tuple[str, int, int]]:
    """What is found in some bytes, by check and place."""
    return [(one.check, one.place.line, one.place.column) for one in decode(data, "a.yml").found]


@pytest.mark.parametrize(
    "data",
    ["Zoë\nÁngel\n".encode(), "Zoë\r\nÁngel\r\n".encode(), "Zoë\r\nÁngel".encode("utf-8-sig")],
    ids=["plain", "crlf", "bom"],
)
def test_line_ends_and_marks_make_no_difference(data: bytes) -> None:
    """CRLF, a byte-order mark and a missing last line end are all read alike."""
    decoded = decode(data, "a.yml")
    assert (decoded.text, decoded.found) == ("Zoë\nÁngel\n", ())
    assert decoded.lines[:2] == ("Zoë", "Ángel")


def test_a_byte_of_another_encoding_is_placed_and_guessed() -> None:
    """Latin-1 letters are placed by line and column, and the letter that was meant is named."""
    decoded = decode("name: Zoë\nwho: José\n".encode("cp1252"), "a.yml")
    assert decoded.found[0].place == Place("a.yml", 1, 9, 1, 10)
    assert decoded.found[0].message == (
        "The byte EB is not UTF-8 (on old Windows systems it is `ë`), and 1 more."
    )
    assert decoded.text == f"name: Zo{REPLACED}\nwho: Jos{REPLACED}\n"


@pytest.mark.parametrize("encoding", ["utf-16", "utf-16-le", "utf-16-be", "utf-32"])
def test_wide_encodings_are_refused_whole(encoding: str) -> None:
    """UTF-16 and UTF-32, with or without a mark, are named for what they are."""
    decoded = decode("format: 1\n".encode(encoding), "a.yml")
    assert decoded.text is None
    assert [one.check for one in decoded.found] == ["not_utf8"]


@pytest.mark.parametrize(
    "letter", ["\0", "\x07", "\x1b", "\x7f", "\x85", "\r", "\ufeff", "\u2028", "\u202e", "\u2066", "\uffff"]
)
def test_invisible_characters_are_placed(letter: str) -> None:
    """A character that belongs in no text is placed, replaced, and the rest is read on."""
    data = f"format: 1\nid: a{letter}b\n".encode()
    assert told(data) == [("odd_character", 2, 6)]
    assert decode(data, "a.yml").text == f"format: 1\nid: a{REPLACED}b\n"
    assert is_odd(f"a{letter}")


def test_tabs_and_everyday_letters_are_not_odd() -> None:
    """Tabs, accents, right-to-left names and joined emoji are text."""
    assert told("a\tb é שלום 👩\u200d⚕️\n".encode()) == []


def test_a_file_of_rubbish_is_not_read_on() -> None:
    """Beyond twenty odd characters nothing more is said and the text is given up."""
    decoded = decode(b"a" * 64 + b"\x01" * 500, "a.yml")
    assert decoded.text is None
    assert len(decoded.found) == 20


def test_the_bound_on_size_is_exact() -> None:
    """A file of the largest size is read; one byte more is refused."""
    assert told(b"a" * LIMIT) == []
    assert told(b"a" * (LIMIT + 1)) == [("file_unreadable", 1, 1)]


@given(st.binary(max_size=300))
def test_no_bytes_raise(data: bytes) -> None:
    """Whatever the bytes, there is text without odd characters, or something to fix."""
    decoded = decode(data, "a.yml")
    assert decoded.found or decoded.text is not None
    assert decoded.text is None or not is_odd(decoded.text)
