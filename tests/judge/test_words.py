"""How values, limits and bounds read in plain words."""

from decimal import Decimal
from typing import Any

import pytest

from builder.judge.judge import Judge
from builder.judge.words import between, limit_words, told
from builder.model.condition import parse, parse_limits
from builder.model.fact import Fact, Value, plain
from tests.judge.small import content, fact

SPACE = Judge(content()).space


@pytest.mark.parametrize(
    ("number", "words"),
    [("20", "20"), ("20.50", "20.5"), ("100", "100"), ("0", "0"), ("0.10", "0.1"), ("-3", "-3")],
)
def test_a_number_has_no_idle_zeros(number: str, words: str) -> None:
    """As a person would write it, never with an exponent."""
    assert plain(Decimal(number)) == words


HOURS = fact("number", "measure", "both", unit="h", label="Time")


@pytest.mark.parametrize(
    ("written", "value", "words"),
    [
        (HOURS, Decimal(72), "72 h"),
        (HOURS, Decimal(96), "4 days"),
        (HOURS, Decimal(100), "100 h"),
        (HOURS, Decimal(504), "21 days"),
        (fact("number", "measure", "lower", unit="°"), Decimal(45), "45°"),
        (fact("yes_no", "written", "no", words={"yes": "cloth between"}), "yes", "cloth between"),
        (fact("scale", "sign", "higher", values=["same_day"]), "same_day", "same day"),
    ],
)
def test_a_value_reads_with_its_unit(written: dict[str, Any], value: Value, words: str) -> None:
    """Long times are whole days where they are; words are the fact's own."""
    assert Fact.model_validate(written).in_words(value) == words


@pytest.mark.parametrize(
    ("limits", "words"),
    [
        ({"minutes": {"at_most": 20}}, "time at most 20 min"),
        ({"minutes": {"over": 5, "below": 10}}, "time over 5 min and under 10 min"),
        ({"minutes": {"at_least": 5, "at_most": 10}}, "time 5 to 10 min"),
        ({"barrier": "yes"}, "cloth between"),
        ({"site": ["proximal", "remote"]}, "site: proximal or remote"),
        ({"urgency": {"at_least": "same_day"}}, "urgency at least same day"),
    ],
)
def test_a_limit_says_what_it_asks_for(limits: dict[str, Any], words: str) -> None:
    """Label and bounds of a number, the own words of a yes or no."""
    read = parse_limits(limits)
    assert isinstance(read, dict)
    assert [limit_words(node, SPACE) for node in read.values()] == [words]


def test_a_limit_that_is_no_simple_one_is_left_to_the_rule() -> None:
    """A condition of several parts has no short words of its own."""
    assert limit_words(parse({"not": {"fever": "yes"}}), SPACE) == "as the rule asks"


@pytest.mark.parametrize(
    ("name", "value", "words"),
    [
        ("knee_flexion", Decimal(45), "knee bend 45°"),
        ("swelling", "rising", "swelling: rising"),
        ("fever", "yes", "fever: yes"),
        ("written.barrier", "no", "on the skin"),
        ("written.site", "distal", "site: distal"),
    ],
)
def test_a_fact_with_its_value_inside_a_sentence(name: str, value: Value, words: str) -> None:
    """A number follows its label, a word stands after a colon, own words stand alone."""
    assert told(SPACE.variables[name].fact, value) == words


def test_two_bounds_say_their_unit_once() -> None:
    """Unless days and hours meet."""
    hours = Fact.model_validate(HOURS)
    assert between(hours, Decimal(12), Decimal(24)) == ("12", "24 h")
    assert between(hours, Decimal(72), Decimal(240)) == ("72 h", "10 days")
