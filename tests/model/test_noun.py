"""What every noun shares: it never changes, knows its keys, and its numbers are exact."""

import dataclasses
import inspect
import pkgutil
from decimal import Decimal
from fractions import Fraction
from importlib import import_module
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import BaseModel, TypeAdapter, ValidationError

import builder.model
from builder.model.noun import Hours, Id, Noun, Share, Text, hours_of, share_of

# An answer sheet comes from outside; what it says beyond its shape is kept (shape `caseloom/answers/1`).
KEEPS_UNKNOWN_KEYS = {"AnswerSheet", "Given", "SheetTime"}


def classes() -> list[type[Any]]:
    """Every class that the modules of the model define."""
    modules = [
        import_module(f"builder.model.{one.name}") for one in pkgutil.iter_modules(builder.model.__path__)
    ]
    return [
        made
        for module in modules
        for _, made in inspect.getmembers(module, inspect.isclass)
        if made.__module__ == module.__name__
    ]


NOUNS = [one for one in classes() if issubclass(one, BaseModel)]
PLAIN = [one for one in classes() if dataclasses.is_dataclass(one)]


def test_the_walk_finds_the_nouns() -> None:
    """The tests below speak of nouns from every side, not of an empty list."""
    assert {"Case", "Rule", "Card", "Paper", "Key", "CourseFile"} <= {one.__name__ for one in NOUNS}
    assert {"OptionJudgement", "Content", "Among"} <= {one.__name__ for one in PLAIN}


@pytest.mark.parametrize("noun", [one for one in NOUNS if one.__name__ not in KEEPS_UNKNOWN_KEYS])
def test_a_noun_is_closed(noun: type[BaseModel]) -> None:
    """An unknown key is refused by every noun, and said to be unknown."""
    with pytest.raises(ValidationError) as refused:
        noun.model_validate({"no_such_key": 1})
    assert (("no_such_key",), "extra_forbidden") in [
        (one["loc"], one["type"]) for one in refused.value.errors()
    ]


@pytest.mark.parametrize("noun", NOUNS)
def test_a_noun_never_changes(noun: type[BaseModel]) -> None:
    """No field of any noun can be set again."""
    made = noun.model_construct()
    for name in noun.model_fields:
        with pytest.raises(ValidationError, match="frozen"):
            setattr(made, name, None)


@pytest.mark.parametrize("kind", PLAIN)
def test_a_plain_value_never_changes(kind: Any) -> None:  # noqa: ANN401 - any data class
    """Data classes of the model are frozen too."""
    assert kind.__dataclass_params__.frozen


def test_an_open_and_a_changeable_noun_would_be_seen() -> None:
    """A noun that is neither closed nor frozen does not pass for one that is."""

    class Loose(BaseModel):
        field: int = 0

    made = Loose.model_validate({"no_such_key": 1})
    made.field = 2
    assert made.field == 2
    assert Noun.model_config == {"frozen": True, "extra": "forbid"}


@pytest.mark.parametrize(
    ("written", "hours"),
    [
        ("30 h", "30"),
        ("1 hour", "1"),
        ("36hours", "36"),
        ("9 days", "216"),
        ("1 day", "24"),
        ("4 weeks", "672"),
        ("1.5 h", "1.5"),
        ("0.1 days", "2.4"),
        (" 2 h ", "2"),
        (18, "18"),
        (Decimal("0.5"), "0.5"),
        (0, "0"),
    ],
)
def test_a_span_is_exact_hours(written: object, hours: str) -> None:
    """Hours, days and weeks become hours without rounding."""
    assert TypeAdapter(Hours).validate_python(written) == Decimal(hours)


@pytest.mark.parametrize(
    "written", ["", "h", "soon", "3 months", "3 H", "-3 h", "1,5 h", "1. h", "3 h ago", "3h\n5h"]
)
def test_what_is_no_span_is_refused(written: str) -> None:
    """A span that is not understood is refused with an example."""
    with pytest.raises(ValueError, match="write a span of time such as `30 h`, `9 days` or `4 weeks`"):
        hours_of(written)


@pytest.mark.parametrize(
    "written", [-1, Decimal("-0.5"), Decimal("NaN"), Decimal("Infinity"), None, [], True]
)
def test_hours_are_a_number_from_zero_up(written: object) -> None:
    """Time since an injury is never negative and always a number."""
    with pytest.raises(ValidationError):
        TypeAdapter(Hours).validate_python(written)


@pytest.mark.parametrize(
    ("written", "share"),
    [
        ("75 %", Fraction(3, 4)),
        ("75%", Fraction(3, 4)),
        ("3/4", Fraction(3, 4)),
        ("69.565 %", Fraction(13913, 20000)),
        ("0 %", Fraction(0)),
        ("100 %", Fraction(1)),
        ("1", Fraction(1)),
        (1, Fraction(1)),
        (Decimal("0.7"), Fraction(7, 10)),
        (Fraction(2, 3), Fraction(2, 3)),
    ],
)
def test_a_share_is_an_exact_fraction(written: object, share: Fraction) -> None:
    """A share is never rounded: 69.565 % stays below 70 %."""
    assert TypeAdapter(Share).validate_python(written) == share


def test_a_share_just_below_a_pass_mark_stays_below() -> None:
    """32 of 46 is less than 70 %, and more than 69.565 %, its printed form."""
    mark = Fraction(32, 46)
    assert TypeAdapter(Share).validate_python("69.565 %") < mark < TypeAdapter(Share).validate_python("70 %")


@given(st.integers(0, 100), st.integers(0, 999_999))
def test_any_written_percentage_is_exact(whole: int, decimals: int) -> None:
    """A percentage with up to six decimals is that many hundredths, exactly."""
    share = Fraction(whole, 100) + Fraction(decimals, 10**8)
    if share <= 1:
        assert share_of(f"{whole}.{decimals:06d} %") == share


@pytest.mark.parametrize(
    "written",
    ["75", 75, "101 %", "-1 %", "4/3", "1/0", "-1/2", "three quarters", "", "%", "0,75", Decimal(2)],
)
def test_what_is_no_share_is_refused(written: object) -> None:
    """A number beyond the whole, a truth value and an inexact number are refused with an example."""
    with pytest.raises(ValueError, match="write a share between 0 % and 100 %, such as `75 %` or `3/4`"):
        share_of(written)


@pytest.mark.parametrize("written", ["Thigh", "1st", "_x", "a-b", "a b", "", "a" * 61, "größe", "a\n"])
def test_an_id_is_a_plain_small_name(written: str) -> None:
    """An id can stand in a file name, an address and a condition."""
    with pytest.raises(ValidationError):
        TypeAdapter(Id).validate_python(written)
    assert TypeAdapter(Id).validate_python("thigh_2") == "thigh_2"


def test_a_text_says_something() -> None:
    """White space around a text is taken off; nothing is left of an empty one."""
    assert TypeAdapter(Text).validate_python("  Cold.\n") == "Cold."
    for written in ("", " \n", "x" * 4001, 5):
        with pytest.raises(ValidationError):
            TypeAdapter(Text).validate_python(written)
