"""Templates of new files, filled with whatever was typed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.doors.yaml import read_yaml
from builder.new.fill import as_flow, as_yaml, filled


def read_back(written: str) -> object:
    """What a value written in a block and inside brackets reads as."""
    text = f"a: {written}\nb: [{written}, {{c: {written}}}]\n"
    parsed = read_yaml(text.encode("utf-8"), "x.yml")
    assert parsed.found == ()
    assert isinstance(parsed.value, dict)
    one = parsed.value["a"]
    assert parsed.value["b"] == [one, {"c": one}]
    return one


@given(st.text(alphabet=st.characters(codec="utf-8"), max_size=60))
def test_whatever_is_typed_is_one_text(typed: str) -> None:
    """It reads back as the same words, whatever marks are in it, inside brackets too."""
    written = as_yaml(typed)
    once = " ".join("".join(one if one.isprintable() else " " for one in typed).split())
    assert read_back(written) == once


@pytest.mark.parametrize(
    "text", ["yes", "true", "12", "0.5", "null", "~", "- a", "a: b", "a # b", "[x", "it's"]
)
def test_words_that_mean_something_stay_text(text: str) -> None:
    """Truth values, numbers and marks of the notation are put in quotes where they have to be."""
    assert read_back(as_yaml(text)) == text


def test_plain_data_is_one_line() -> None:
    """Blocks, lists, texts and numbers."""
    assert as_flow({"a": [1, "x y"], "b": {"c": "d: e"}}) == '{a: [1, x y], b: {c: "d: e"}}'


def test_a_value_that_is_not_given_is_no_empty_line() -> None:
    """A template that asks for more than it is given is a fault of ours."""
    with pytest.raises(KeyError):
        filled("class.yml", {"id": "spring"})
