"""Facts: their values, how they read, and which sets of questions cover them."""

from decimal import Decimal

import pytest
from pydantic import ValidationError

from builder.model.fact import Fact, FactBook, ScreeningBook, Value
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


def declared(**facts: dict[str, object]) -> FactBook:
    """A fact book with these facts."""
    return FactBook.model_validate({"format": 1, "facts": facts, "written": {}})


@pytest.mark.parametrize("mark", [{"extra": True}, {"asked_where": {"region": "thigh"}}])
def test_what_need_not_be_asked_has_a_safe_side(mark: dict[str, object]) -> None:
    """Not recorded it is taken at its safest, so it must be said which way that is."""
    assert not Fact.model_validate(fact("yes_no", "red_flag", "yes", **mark)).asked_of_all
    with pytest.raises(ValidationError, match="which way is worse"):
        Fact.model_validate(fact("yes_no", "red_flag", "neither", **mark))


@pytest.mark.parametrize(
    "where",
    [
        {"nothing": "yes"},
        {"swelling": "none"},
        {"lump": "yes"},
        {"strength": {"below": 3}},
        {"recorded": "age"},
    ],
)
def test_who_is_asked_goes_by_what_everyone_is_asked(where: dict[str, object]) -> None:
    """Not by what nobody declared, what may change in the room, what some are not asked, or by the asking."""
    facts: dict[str, dict[str, object]] = {
        "region": fact("one_of", "measure", "both", values=["thigh"]),
        "age": fact("number", "history", "both"),
        "swelling": fact("scale", "sign", "higher", values=["none", "rising"], room=True),
        "lump": fact("yes_no", "red_flag", "yes", asked_where={"region": "thigh"}),
        "strength": fact("number", "measure", "lower", extra=True),
    }
    assert declared(**facts).facts["lump"].asked_where is not None
    with pytest.raises(ValidationError, match="everyone is asked"):
        declared(**facts, gap=fact("yes_no", "red_flag", "yes", asked_where=where))
