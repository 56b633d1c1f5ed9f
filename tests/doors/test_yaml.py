"""YAML as plain data: what is read, and that both parsers read it alike."""

from decimal import Decimal

import pytest

from builder.doors.yaml import LOADERS, Loader, read_yaml

both = pytest.mark.parametrize("loader", LOADERS, ids=lambda loader: loader.__name__)


def test_there_are_two_parsers() -> None:
    """The quick parser is there beside the one that always is, so that the tests below compare them."""
    assert [getattr(loader, "__name__", "") for loader in LOADERS] == ["CSafeLoader", "SafeLoader"]


PLAIN = """\
# a comment
format: 1
title: "A: quoted"
dose: {minutes: 7.5, barrier: yes}
list:
  - one
  - 'it''s'
  - [1, true, null]
folded: >-
  a
  b
literal: |
  a
  b
empty:
"""


@both
def test_plain_data(loader: Loader) -> None:
    """Blocks, lists, both flow styles, folded and literal text become plain data."""
    parsed = read_yaml(PLAIN.encode(), "a.yml", loader)
    assert parsed.value == {
        "format": 1,
        "title": "A: quoted",
        "dose": {"minutes": Decimal("7.5"), "barrier": "yes"},
        "list": ["one", "it's", [1, True, None]],
        "folded": "a b",
        "literal": "a\nb\n",
        "empty": None,
    }
    assert parsed.found == ()
    assert parsed.whole


@both
@pytest.mark.parametrize("data", [b"", b"\n\n", b"# nothing\n", b"---\n", b"\xef\xbb\xbf"])
def test_an_empty_file_is_nothing(data: bytes, loader: Loader) -> None:
    """A file without content is None, and it is for the reader of nouns to mind."""
    parsed = read_yaml(data, "a.yml", loader)
    assert (parsed.value, parsed.found, parsed.whole) == (None, (), True)


@both
def test_a_list_or_a_word_at_the_top_is_read(loader: Loader) -> None:
    """The door does not judge what the top of a file must be."""
    assert read_yaml(b"- a\n- b\n", "a.yml", loader).value == ["a", "b"]
    assert read_yaml(b"a b", "a.yml", loader).value == "a b"


@both
def test_line_ends_and_marks_make_no_difference(loader: Loader) -> None:
    """CRLF files with a byte-order mark have the same data and the same places."""
    plain = read_yaml(b"a:\n  - b\n  - {c: d}\n", "a.yml", loader)
    other = read_yaml(b"\xef\xbb\xbfa:\r\n  - b\r\n  - {c: d}\r\n", "a.yml", loader)
    assert other.value == plain.value
    assert dict(other.places.values) == dict(plain.places.values)
    assert other.places.lines == plain.places.lines


@both
def test_quotes_keep_text_text(loader: Loader) -> None:
    """What stands in quotes is never a number, a truth value or nothing."""
    text = "a: \"1\"\nb: 'true'\nc: ''\n\"2\": x\n'null': y\n"
    expected = {"a": "1", "b": "true", "c": "", "2": "x", "null": "y"}
    parsed = read_yaml(text.encode(), "a.yml", loader)
    assert (parsed.value, parsed.found) == (expected, ())
