"""Every value is found again at its place in the source."""

from decimal import Decimal

import pytest
import yaml
from hypothesis import given, settings
from hypothesis import strategies as st

from builder.doors.yaml import LOADERS, Loader, Parsed, read_yaml
from builder.place import Path, Place, Step

both = pytest.mark.parametrize("loader", LOADERS, ids=lambda loader: loader.__name__)

WORDS = st.text("abcdé ß:#-'\"漢🎪,[]{}&*!|>%@", max_size=12)
LEAVES = WORDS | st.integers(-999, 999) | st.booleans() | st.none()
DATA = st.recursive(
    LEAVES,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(WORDS, inner, max_size=4),
    max_leaves=15,
)


def slice_of(parsed: Parsed, place: Place) -> str:
    """The text of the source at a place."""
    lines = list(parsed.places.lines[place.line - 1 : place.end_line])
    lines[-1] = lines[-1][: place.end_column - 1]
    lines[0] = lines[0][place.column - 1 :]
    return "\n".join(lines)


def value_at(data: object, path: Path) -> object:
    """The value at a path of plain data."""
    for step in path:
        data = inside(data, step)
    return data


def inside(data: object, step: Step) -> object:
    """One step into plain data."""
    if isinstance(data, dict):
        return data[step]
    assert isinstance(data, list)
    assert isinstance(step, int)
    return data[step]


@both
def test_places_are_one_based_code_points(loader: Loader) -> None:
    """Lines and columns count from one, in code points; a block ends with its last value."""
    text = "é: 🎪x\nlist:\n  - {a: 1, b: [2, 33]}\n  - c: 'd'\n    e: \"f\"\n\n# end\nlast:\n"
    parsed = read_yaml(text.encode(), "a.yml", loader)
    spans = {
        path: (place.line, place.column, place.end_line, place.end_column)
        for path, place in parsed.places.values.items()
    }
    assert spans == {
        (): (1, 1, 8, 6),
        ("é",): (1, 4, 1, 6),
        ("list",): (3, 3, 5, 11),
        ("list", 0): (3, 5, 3, 23),
        ("list", 0, "a"): (3, 9, 3, 10),
        ("list", 0, "b"): (3, 15, 3, 22),
        ("list", 0, "b", 0): (3, 16, 3, 17),
        ("list", 0, "b", 1): (3, 19, 3, 21),
        ("list", 1): (4, 5, 5, 11),
        ("list", 1, "c"): (4, 8, 4, 11),
        ("list", 1, "e"): (5, 8, 5, 11),
        ("last",): (8, 6, 8, 6),
    }
    assert parsed.places.of_key(("list", 1, "e")) == Place("a.yml", 5, 5, 5, 6)


@both
@settings(max_examples=300)
@given(data=DATA, flow=st.booleans())
def test_every_value_is_found_at_its_place(data: object, *, flow: bool, loader: Loader) -> None:
    """Reading again what stands at the place of a word, number, key or flow list gives the same value."""
    text = yaml.safe_dump(data, allow_unicode=True, default_flow_style=flow, sort_keys=False, width=60)
    parsed = read_yaml(text.encode(), "a.yml", loader)
    assert parsed.found == ()
    assert parsed.value == data
    for path, place in parsed.places.values.items():
        value = value_at(data, path)
        if flow or not isinstance(value, list | dict):
            assert read_yaml(slice_of(parsed, place).encode(), "a.yml", loader).value == value
    for path, place in parsed.places.keys.items():
        assert read_yaml(slice_of(parsed, place).encode(), "a.yml", loader).value == path[-1]


@given(st.decimals(allow_nan=False, allow_infinity=False, places=3, min_value=-999, max_value=999))
def test_decimals_are_exact(number: Decimal) -> None:
    """A decimal keeps every digit that was written."""
    assert str(inside(read_yaml(f"a: {number:f}".encode(), "a.yml").value, "a")) == f"{number:f}"
