"""The short tags of a lesson."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.model.lesson import (
    KINDS,
    LessonTag,
    lesson_parts,
    lesson_pictures,
    lesson_tags,
    media_of,
    without_notes,
)


@pytest.mark.parametrize(
    ("line", "tag"),
    [
        ("[card friction]", ("card", "friction")),
        ("[case wire_hamstring]  ", ("case", "wire_hamstring")),
        ("[figure glide]", ("figure", "glide")),
        ("[film landing]", ("film", "landing")),
        ("[test final]", ("test", "final")),
        ("[flags]", ("flags", "")),
        ("[phases]", ("phases", "")),
    ],
)
def test_a_tag_stands_on_its_own_line(line: str, tag: tuple[str, str]) -> None:
    """Each kind is read with the id it names."""
    assert [(one.kind, one.name) for one in lesson_tags(f"Words.\n\n{line}\n\nMore.")] == [tag]


@pytest.mark.parametrize(
    "line", ["see [card friction]", "[card friction](x.md)", "[card Friction]", "[clip x]", " [flags]"]
)
def test_other_brackets_are_left_alone(line: str) -> None:
    """What is inside a sentence, a link or unknown stays Markdown."""
    assert lesson_tags(line) == []


def test_a_tag_knows_its_line() -> None:
    """Lines are counted from 1."""
    assert [one.line for one in lesson_tags("a\n[flags]\nb\n[phases]")] == [2, 4]


def test_a_tag_in_a_note_is_none() -> None:
    """A note to oneself places nothing, and does not move the lines below it."""
    assert [one.line for one in lesson_tags("<!-- later:\n[card glide]\n-->\n[flags]\n")] == [4]


@given(st.lists(st.sampled_from(["words", "", "[flags]", "[card friction]", "[broken"]), max_size=8))
def test_nothing_is_lost_but_the_tags(lines: list[str]) -> None:
    """The parts, tags written out again, are the lesson."""
    text = "\n".join(lines)
    written = [part if isinstance(part, str) else _written(part) for part in lesson_parts(text)]
    assert "".join(written) == text


def _written(tag: LessonTag) -> str:
    return f"[{tag.kind} {tag.name}]" if tag.name else f"[{tag.kind}]"


def test_the_kinds_are_those_that_are_read() -> None:
    """No kind is declared that the pattern does not know."""
    assert [lesson_tags(f"[{kind} x]")[0].kind for kind in KINDS] == list(KINDS)


def test_a_note_to_oneself_is_left_out() -> None:
    """What stands between the marks of a note is not published; a note inside a line stays text."""
    assert without_notes("<!-- one\n[card glide]\n-->\nText <!-- here -->\n") == "Text <!-- here -->\n"


def test_pictures_are_read_with_their_place() -> None:
    """Words, address, line and column; a title is no part of the address, a note holds no picture."""
    text = '<!-- ![no](n.png)\n-->\nSee ![a pad](../media/pad.png "Title") and ![]( <x y.png>).\n![](b.png)\n'
    found = [(one.alt, one.target, one.line, one.column) for one in lesson_pictures(text)]
    assert found == [("a pad", "../media/pad.png", 3, 5), ("", "b.png", 4, 1)]


def test_only_the_folder_of_media_is_a_file_of_the_course() -> None:
    """What lies elsewhere, or in the network, names no file."""
    text = "![a](../media/in/a.png) ![b](b.png) ![c](https://circus.example/c.png)"
    assert [media_of(one) for one in lesson_pictures(text)] == ["media/in/a.png", "", ""]
