"""Facts: their values, how they read, and which sets of questions cover them."""

from decimal import Decimal

import pytest
from pydantic import ValidationError

from builder.model.fact import Fact, ScreeningBook, Value
from tests.judge.small import fact


@pytest.mark.parametrize(
    ("written", "values"),
    [
        (fact("yes_no", "sign", "yes"), ("no", "yes")),
        (fact("scale", "sign", "higher", values=["none", "slight", "clear"]), ("none", "slight", "clear")),
        (fact("number", "measure", "lower"), ()),
    ],
)
def test_the_words_a_fact_may_have(written: dict[str, object], values: tuple[str, ...]) -> None:
    """Yes and no come from no to yes; other words keep the author's order; a number has none."""
    assert Fact.model_validate(written).words_of_values == values


@pytest.mark.parametrize(
    ("written", "value", "words"),
    [
        (fact("yes_no", "sign", "yes", words={"yes": "cloth between"}), "yes", "cloth between"),
        (fact("scale", "sign", "higher", values=["same_day"]), "same_day", "same day"),
        (fact("number", "measure", "lower", unit="°"), Decimal(72), "72°"),
        (fact("number", "measure", "lower", unit="%"), Decimal("7.50"), "7.5%"),
        (fact("number", "measure", "higher", unit="min"), Decimal(100), "100 min"),
        (fact("number", "measure", "higher"), Decimal(0), "0"),
    ],
)
def test_a_value_reads_as_on_the_page(written: dict[str, object], value: Value, words: str) -> None:
    """Own words where there are some, else the word itself; numbers without idle zeros, with their unit."""
    assert Fact.model_validate(written).in_words(value) == words


@pytest.mark.parametrize(
    "written",
    [
        fact("truth", "sign", "yes"),
        fact("yes_no", "mood", "yes"),
        fact("yes_no", "sign", "sometimes"),
        fact("yes_no", "sign", "yes", excludes=["No Id"]),
        {"kind": "yes_no", "group": "sign", "worse_when": "yes"},
    ],
)
def test_a_fact_declares_itself_fully(written: dict[str, object]) -> None:
    """A fact of no known kind, group or direction, or without a label, is refused."""
    with pytest.raises(ValidationError):
        Fact.model_validate(written)


def book(**includes: list[str]) -> ScreeningBook:
    """Sets `a`, `b` and `c` that each cover a fact of their own and include others."""
    sets = {
        name: {"name": name, "date": "2026-11-01", "covers": [f"{name}1"], "includes": includes.get(name, [])}
        for name in ("a", "b", "c")
    }
    return ScreeningBook.model_validate({"format": 1, "sets": sets})


@pytest.mark.parametrize(
    ("includes", "covered"),
    [
        ({}, ("a1",)),
        ({"a": ["c", "b"]}, ("a1", "c1", "b1")),
        ({"a": ["b"], "b": ["c"]}, ("a1", "b1", "c1")),
        ({"a": ["b", "c"], "b": ["c"]}, ("a1", "b1", "c1")),
        ({"a": ["b"], "b": ["a"]}, ("a1", "b1")),
        ({"a": ["a", "gone"]}, ("a1",)),
    ],
)
def test_a_set_covers_what_it_includes(includes: dict[str, list[str]], covered: tuple[str, ...]) -> None:
    """Included sets count with all they include, once, even where they lead back."""
    assert book(**includes).covered_by("a") == covered


def test_an_unknown_set_covers_nothing() -> None:
    """A set that is not there makes no fact a no."""
    assert book().covered_by("gone") == ()
