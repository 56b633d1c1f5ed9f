"""Hostile and broken YAML: placed with a remedy, never raised, in both parsers alike."""

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from builder.doors.yaml import LOADERS, Loader, Parsed, read_yaml

both = pytest.mark.parametrize("loader", LOADERS, ids=lambda loader: loader.__name__)

# Where reading goes on: the text, then every fault as check, line and column.
READ_ON: dict[str, list[tuple[str, int, int]]] = {
    "a: &x 1": [("yaml_anchor", 1, 4)],
    "a: 1\nb: *x": [("yaml_alias", 2, 4)],
    "a: &x {b: 1}\nc: {<<: *x}": [("yaml_anchor", 1, 4), ("yaml_merge", 2, 5), ("yaml_alias", 2, 9)],
    "&x a: 1\n*x : 2": [("yaml_anchor", 1, 1), ("yaml_alias", 2, 1)],
    "a: !!python/object/apply:os.system [ls]": [("yaml_tag", 1, 4)],
    "!x a: 1": [("yaml_tag", 1, 1)],
    "a: !!binary aGk=\nb: !!str 1": [("yaml_tag", 1, 4), ("yaml_tag", 2, 4)],
    "a: 1\nb: 2\na: 3": [("yaml_key_twice", 3, 1)],
    "a: {b: 1, b: 2}\nc:\n  d: 1\n  d: 2": [("yaml_key_twice", 1, 11), ("yaml_key_twice", 4, 3)],
    "1: a\ntrue: b\n~: c\n2.5: d": [("yaml_key_not_text", line, 1) for line in (1, 2, 3, 4)],
    "? [a, b]\n: c\n? {d: e}\n: f": [("yaml_key_not_text", 1, 3), ("yaml_key_not_text", 3, 3)],
    "<<: {a: 1}": [("yaml_merge", 1, 1)],
    "%YAML 1.2\n---\na: 1": [("yaml_directive", 1, 1)],
    "%TAG !e! tag:x,2000:\n---\na: 1": [("yaml_directive", 1, 1)],
    'a: "x\\0"\nb: "\\u202e"': [("yaml_odd_escape", 1, 4), ("yaml_odd_escape", 2, 4)],
    "a: \0\nb: \x1b": [("odd_character", 1, 4), ("odd_character", 2, 4)],
}
# Where it cannot: the text, then the one fault.
STOPPED: dict[str, tuple[str, int, int]] = {
    "a: b: c": ("yaml_colon", 1, 5),
    "a: 1\n  b: 2": ("yaml_colon", 2, 4),
    "a:\n\tb: 1": ("yaml_tab", 2, 1),
    "a: |\n\tb": ("yaml_tab", 2, 1),
    'a: "b': ("yaml_open_quote", 1, 4),
    "a: 'b\n---\n'": ("yaml_open_quote", 1, 4),
    "a: [b, c": ("yaml_open_bracket", 1, 4),
    "a: [": ("yaml_open_bracket", 1, 4),
    "{a: 1, b": ("yaml_open_bracket", 1, 1),
    "a: [b\nc: d": ("yaml_open_bracket", 1, 4),
    "a: }": ("yaml_start", 1, 4),
    "a: @b": ("yaml_start", 1, 4),
    "a: %b": ("yaml_start", 1, 4),
    "a: 'b' c": ("yaml_indentation", 1, 8),
    "a:\n    b: 1\n  c: 2": ("yaml_indentation", 3, 3),
    "a:\n  - b\n  c: 1": ("yaml_indentation", 3, 3),
    "a: 1\n- b": ("yaml_indentation", 2, 1),
    "a: 1\nb\nc: 2": ("yaml_no_colon", 2, 1),
    "a: >b\n c": ("yaml_block_text", 1, 5),
    "a: !e!x b": ("yaml_tag", 1, 4),
    "a: &": ("yaml_anchor", 1, 4),
    "%YAML 9.9\n---\na: 1": ("yaml_directive", 1, 1),
    "a: 1\n---\nb: 2": ("yaml_two_documents", 2, 1),
    "a: 1\n...\n---\nb: 2": ("yaml_two_documents", 3, 1),
}
DEPTH, NODES = 40, 50_000
BOMB = "a: &a [x, x]\n" + "".join(
    f"{chr(98 + n)}: &{chr(98 + n)} [*{chr(97 + n)}, *{chr(97 + n)}]\n" for n in range(20)
)


def told(parsed: Parsed) -> list[tuple[str, int, int]]:
    """Every fault by check and place."""
    return [(one.check, one.place.line, one.place.column) for one in parsed.found]


@both
@pytest.mark.parametrize("text", READ_ON)
def test_every_fault_is_told(text: str, loader: Loader) -> None:
    """Reading goes on after what is refused, and tells all of it."""
    parsed = read_yaml(text.encode(), "a.yml", loader)
    assert told(parsed) == READ_ON[text]
    assert parsed.whole
    assert all(one.message and one.remedy for one in parsed.found)


@both
@pytest.mark.parametrize("text", STOPPED)
def test_what_cannot_be_read_is_placed(text: str, loader: Loader) -> None:
    """Broken syntax is told once, at the same place by both parsers, in our own words."""
    parsed = read_yaml(text.encode(), "a.yml", loader)
    assert told(parsed) == [STOPPED[text]]
    assert not parsed.whole
    assert all(one.message and one.remedy for one in parsed.found)


@both
def test_a_bad_escape_is_placed_on_its_line(loader: Loader) -> None:
    """Escapes that make no character, a lone half of one or one beyond all planes are placed."""
    for escape in (r"\q", r"\x9", r"\ud800", r"\UFFFFFFFF", r"\U00110000"):
        parsed = read_yaml(f'a: 1\nb: "{escape}"\n'.encode(), "a.yml", loader)
        assert [
            (one.check in ("yaml_escape", "yaml_odd_escape"), one.place.line) for one in parsed.found
        ] == [(True, 2)]


@both
def test_a_key_that_stands_twice_names_the_first(loader: Loader) -> None:
    """The fault is at the second key and points to the first."""
    (fault,) = read_yaml(b"a: 1\nb: 2\na: 3\n", "a.yml", loader).found
    assert [(near.place.line, near.message) for near in fault.related] == [(1, "`a` was first written here.")]


@both
def test_an_alias_bomb_stays_small(loader: Loader) -> None:
    """No reference is ever followed, so nothing can grow."""
    parsed = read_yaml(BOMB.encode(), "a.yml", loader)
    assert [one.check for one in parsed.found].count("yaml_alias") == 40
    assert parsed.value is not None
    assert len(parsed.places.values) < 100


@both
@pytest.mark.parametrize(("opening", "closing"), [("[", "]"), ("{a: ", "}"), ("- ", ""), ("? ", "")])
def test_depth_is_bounded(opening: str, closing: str, loader: Loader) -> None:
    """Forty levels are read; one more, and a hundred thousand, are placed on their line."""
    sound = read_yaml((opening * DEPTH + "x" + closing * DEPTH).encode(), "a.yml", loader)
    assert "yaml_too_deep" not in [one.check for one in sound.found]
    for deep in (DEPTH + 1, 100_000):
        parsed = read_yaml((opening * deep + "x" + closing * deep).encode(), "a.yml", loader)
        assert ("yaml_too_deep", 1) in [(one.check, one.place.line) for one in parsed.found]
        assert not parsed.whole


@both
def test_the_number_of_values_is_bounded(loader: Loader) -> None:
    """Fifty thousand values are read, the list that holds them counted; one more is placed."""
    assert read_yaml(b"- a\n" * (NODES - 1), "a.yml", loader).found == ()
    assert told(read_yaml(b"- a\n" * NODES, "a.yml", loader)) == [("yaml_too_many", NODES, 3)]


@both
def test_size_is_bounded(loader: Loader) -> None:
    """A file of more than a million bytes is not parsed at all."""
    assert told(read_yaml(b"a: 1\n" * 200_001, "a.yml", loader)) == [("file_unreadable", 1, 1)]


@both
@pytest.mark.parametrize("encoding", ["utf-16", "utf-16-le", "utf-32", "cp1252"])
def test_other_encodings_are_placed(encoding: str, loader: Loader) -> None:
    """A file in another encoding is told to be saved as UTF-8."""
    parsed = read_yaml("title: Zoë\n".encode(encoding), "a.yml", loader)
    assert [(one.check, one.remedy) for one in parsed.found] == [("not_utf8", "Save the file as UTF-8.")]


YAMLISH = st.text(
    st.sampled_from("ab1 :-?[]{}&*!|>'\"%@#,\n\t\\x0é\u2028\0~<.") | st.characters(), max_size=80
)


@both
@settings(max_examples=400)
@given(text=YAMLISH)
@example(text="? ")
@example(text='"\\U00110000')
def test_no_text_raises(text: str, loader: Loader) -> None:
    """Whatever is written, it is read to the end or a fault stands within the file."""
    parsed = read_yaml(text.encode("utf-8", errors="surrogatepass"), "a.yml", loader)
    assert parsed.whole or parsed.found
    for fault in parsed.found:
        assert 1 <= fault.place.line <= len(parsed.places.lines)
        assert 1 <= fault.place.column <= len(parsed.places.lines[fault.place.line - 1]) + 1


@given(data=st.binary(max_size=120))
def test_no_bytes_raise(data: bytes) -> None:
    """Whatever the bytes, nothing is raised."""
    for loader in LOADERS:
        parsed = read_yaml(data, "a.yml", loader)
        assert parsed.whole or parsed.found


@settings(max_examples=400)
@given(text=YAMLISH)
def test_both_parsers_agree(text: str) -> None:
    """What both read to the end without a fault they read alike, value and places."""
    quick, pure = (read_yaml(text.encode("utf-8", errors="surrogatepass"), "a.yml", one) for one in LOADERS)
    if not quick.found and not pure.found:
        assert quick.value == pure.value
        assert dict(quick.places.values) == dict(pure.places.values)
        assert dict(quick.places.keys) == dict(pure.places.keys)
