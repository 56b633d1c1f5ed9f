"""The source line with its caret."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.check.excerpt import excerpt, printable
from builder.place import Place


def shown(line: str, start: int, end: int, width: int = 40) -> list[str]:
    """The excerpt for columns of a line that stands seventh in its file."""
    return excerpt(Place("a.yml", 7, start, 7, end), [""] * 6 + [line], width)


def test_the_caret_stands_under_the_value() -> None:
    """One caret for each letter of the value."""
    assert shown("minutes: 45", 10, 12) == ["  7 | minutes: 45", "    |          ^^"]


def test_a_place_without_width_has_one_caret() -> None:
    """An empty value is shown where it should be, also at the end of its line."""
    assert shown("minutes:", 9, 9) == ["  7 | minutes:", "    |         ^"]


def test_a_block_is_marked_on_its_first_line() -> None:
    """What goes on over several lines is marked to the end of the first."""
    lines = ["a:", "  - b: 1", "    c: 2"]
    assert excerpt(Place("a.yml", 2, 5, 3, 9), lines, 40) == ["  2 |   - b: 1", "    |     ^^^^"]


def test_nothing_is_shown_of_a_line_that_is_not_there() -> None:
    """An unknown source, a line beyond the end and a blank line have no excerpt."""
    assert excerpt(Place("a.yml", 1, 1, 1, 2), (), 40) == []
    assert excerpt(Place("a.yml", 3, 1, 3, 2), ("a", "b"), 40) == []
    assert excerpt(Place("a.yml", 1, 1, 1, 1), ("  ", "b"), 40) == []


def test_a_long_line_is_cut_on_both_sides() -> None:
    """The value stays in sight, and cuts are marked."""
    line = "a" * 100 + "VALUE" + "b" * 100
    assert shown(line, 101, 106) == ["  7 | …aaaaaaaaaaaVALUEbbbbbbbbbbbbbbbb…", "    |             ^^^^^"]


def test_wide_and_joined_letters_keep_the_caret_in_line() -> None:
    """Letters two columns wide count twice, joined accents not at all."""
    assert shown("漢字: é: x", 9, 10) == ["  7 | 漢字: é: x", "    |           ^"]


def test_tabs_and_orders_to_a_terminal_are_made_harmless() -> None:
    """A tab is one space wide; an escape character cannot reach the terminal."""
    assert shown("a:\t\x1b[31mred", 4, 5) == ["  7 | a: \ufffd[31mred", "    |    ^"]
    assert printable("a\x1b]0;x\x07b\u202ec\xa0d") == "a\ufffd]0;x\ufffdb\ufffdc d"


@pytest.mark.parametrize("width", [30, 80])
@given(line=st.text(max_size=300), start=st.integers(1, 310), length=st.integers(0, 50))
def test_nothing_is_wider_than_the_terminal(line: str, start: int, length: int, width: int) -> None:
    """Whatever the line and the place, both lines fit and the caret is there."""
    made = shown(line.replace("\n", " "), start, start + length, width)
    assert [len(one) <= width for one in made] in ([], [True, True])
    assert not made or "^" in made[1]


@pytest.mark.parametrize("letter", ["a", "漢", "\u0301"])
def test_a_line_without_end_is_quick(letter: str) -> None:
    """A line of a million letters of any width is cut like any other."""
    made = shown(letter * 1_000_000, 500_000, 500_001)
    assert len(made[1]) <= 40
