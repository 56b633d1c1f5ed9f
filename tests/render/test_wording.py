"""Interface words, chips and spans of time as they read."""

from decimal import Decimal
from string import Formatter

import pytest

from builder.fault import Fault
from builder.model.fact import Fact, plain
from builder.render.wording import chip, span, speaker
from tests.render.samples import facts, words

WRITTEN = facts().written


def test_a_blank_is_filled_by_name() -> None:
    """A word with blanks reads whole."""
    assert speaker(words())("visit_of", n=2, of=4) == "visit 2 of 4"


def test_a_missing_word_is_a_fault() -> None:
    """A word that is not in the file stops the build instead of leaving a hole."""
    with pytest.raises(Fault, match="nowhere"):
        speaker({})("nowhere")


def test_every_shipped_word_is_well_formed() -> None:
    """No word has a blank without a name, or a brace left open."""
    blanks = {key: [name for _, name, _, _ in Formatter().parse(text)] for key, text in words().items()}
    assert [key for key, names in blanks.items() if "" in names] == []


@pytest.mark.parametrize(
    ("hours", "text"),
    [
        ("6", "6 h"),
        ("72", "72 h"),
        ("73", "3 days"),
        ("1440", "60 days"),
        ("1441", "9 weeks"),
        ("7.5", "7.5 h"),
    ],
)
def test_a_span_is_told_in_its_unit(hours: str, text: str) -> None:
    """Hours, days and weeks, each up to its bound."""
    assert span(Decimal(hours), speaker(words())) == text


@pytest.mark.parametrize(
    ("name", "value", "text"),
    [
        ("minutes", Decimal(5), "time 5 min"),
        ("warmed", "yes", "warmed first"),
        ("pressure", Decimal(2), "pressure 2 of 5"),
    ],
)
def test_a_chip_is_short(name: str, value: str | Decimal, text: str) -> None:
    """A value with words of its own needs no label; another stands after its label."""
    assert chip(name, WRITTEN[name], value) == text


def test_an_undeclared_attribute_still_reads() -> None:
    """An attribute that no fact declares is shown by its name."""
    fact: Fact | None = None
    assert chip("pad_size", fact, Decimal("2.50")) == "pad size 2.5"


@pytest.mark.parametrize(("number", "text"), [("1E+1", "10"), ("7.50", "7.5"), ("0", "0"), ("100", "100")])
def test_a_number_is_plain(number: str, text: str) -> None:
    """No exponent, no idle zeros, no lost ones."""
    assert plain(Decimal(number)) == text
