"""Names that every system can keep."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.model.file_name import folded, is_reserved, unkept


@pytest.mark.parametrize(
    ("name", "why"),
    [
        ("thigh.yml", ""),
        (".hidden.yml", ""),
        ("Ödem und Bluterguss.md", ""),
        ("console.yml", ""),
        ("com10.yml", ""),
        ("con.yml", "`con` is the name of a device there"),
        ("AUX", "`AUX` is the name of a device there"),
        ("com1.notes.md", "`com1` is the name of a device there"),
        ("lpt9 .yml", "`lpt9 ` is the name of a device there"),
        ("COM².yml", "`COM²` is the name of a device there"),
        ("CONIN$", "`CONIN$` is the name of a device there"),
        ("notes.", "a dot or a space at its end is dropped there"),
        ("notes ", "a dot or a space at its end is dropped there"),
        ("why?.yml", "`?` may stand in no name there"),
        ("a:b.yml", "`:` may stand in no name there"),
        ("a\nb.yml", "it holds a character that cannot be seen"),
        ("a\udcff.yml", "it holds a character that cannot be seen"),
    ],
)
def test_what_windows_cannot_keep_is_told_with_why(name: str, why: str) -> None:
    """Its rules for names, as Microsoft states them for files, paths and namespaces (from memory)."""
    assert unkept(name) == why


@given(st.from_regex(re.compile(r"[a-z][a-z0-9_]{0,59}"), fullmatch=True))
def test_an_id_can_be_kept_unless_it_is_reserved(name: str) -> None:
    """No other id is refused."""
    assert bool(unkept(f"{name}.yml")) == is_reserved(name)


def test_capitals_and_stored_accents_count_for_nothing() -> None:
    """Two names that a Mac or Windows keeps as one are one."""
    assert folded("Pen\u0303alisa.YML") == folded("peñalisa.yml")
    assert folded("thigh") != folded("thighs")
