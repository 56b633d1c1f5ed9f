"""Values that a fact can have, and those it cannot."""

from decimal import Decimal
from pathlib import Path

import pytest

from builder.model.fact import Fact
from builder.read.refer.values import misfit
from tests.read.folders import changed

T = "course/cases/thigh.yml"
FEVER = Fact(kind="yes_no", label="Fever", group="red_flag", worse_when="yes")
HEAT = Fact(
    kind="scale", label="Warmth", group="sign", worse_when="higher", values=("none", "slight", "clear")
)
BEND = Fact(
    kind="number",
    label="Bend",
    group="measure",
    worse_when="lower",
    unit="°",
    low=Decimal(0),
    high=Decimal(160),
)
FREE = Fact(kind="number", label="Any", group="measure", worse_when="both")
LEAST = Fact(kind="number", label="Least", group="measure", worse_when="both", low=Decimal(1))


@pytest.mark.parametrize(
    ("fact", "value"),
    [
        (FEVER, "yes"),
        (FEVER, "no"),
        (HEAT, "slight"),
        (BEND, 0),
        (BEND, 160),
        (BEND, Decimal("7.5")),
        (FREE, -5),
    ],
)
def test_what_a_fact_can_have(fact: Fact, value: object) -> None:
    """Its words, and every number within its bounds, the bounds themselves included."""
    assert misfit("it", fact, value) is None


@pytest.mark.parametrize(
    ("fact", "value", "message", "remedy"),
    [
        (FEVER, True, "`it` is yes or no, not `true`.", "Write `yes` or `no`."),
        (FEVER, 1, "`it` is yes or no, not `1`.", "Write `yes` or `no`."),
        (FEVER, "maybe", "`maybe` is no value of `it`.", "Known here: `no`, `yes`."),
        (HEAT, "claer", "`claer` is no value of `it`.", "Did you mean `clear`?"),
        (HEAT, ["clear"], "`it` needs one value, not a list.", "Write one word or number."),
        (HEAT, None, "`it` needs one value, not nothing.", "Write one word or number."),
        (BEND, "90", "`it` is a number (°), not `90`.", "Write digits alone, without quotes or unit."),
        (BEND, False, "`it` is a number (°), not `false`.", "Write digits alone, without quotes or unit."),
        (BEND, 161, "`161` is not possible for `it`.", "Write a number from 0 to 160 (°)."),
        (BEND, Decimal("-0.1"), "`-0.1` is not possible for `it`.", "Write a number from 0 to 160 (°)."),
        (LEAST, 0, "`0` is not possible for `it`.", "Write a number from 1 upwards."),
    ],
)
def test_what_it_cannot(fact: Fact, value: object, message: str, remedy: str) -> None:
    """Truth values, numbers as text, unknown words and what lies beyond the bounds."""
    told = misfit("it", fact, value)
    assert told is not None
    assert told[1:] == (message, remedy)


def test_a_fact_that_does_not_hold_itself_has_any_value() -> None:
    """The fault is told where the fact is declared."""
    assert misfit("it", None, "x") is None


@pytest.mark.parametrize(
    ("file", "old", "new", "check"),
    [
        (T, "injury: contusion", "injury: bruise", "fact_value"),
        (T, "region: thigh", "region: knee", "fact_value"),
        (T, "injury: contusion\n", "injury: contusion\nhistory: {numb: 1}\n", "fact_value"),
        (T, "heat: clear", "warmth: clear", "fact_unknown"),
        (T, "heat: clear", "phase: acute", "fact_worked_out"),
        (T, "{set: short}", "{set: short, all_no_except: {fever: high}}", "fact_value"),
        (T, "{minutes: 10,", "{minutes: 100,", "fact_out_of_range"),
        (T, "{minutes: 40,", "{time: 40,", "attribute_unknown"),
        ("content/cards/cold.yml", "{minutes: 10,", "{minutes: ten,", "fact_value"),
        ("content/cards/cold.yml", "[10, 20]", "[10, 61]", "fact_out_of_range"),
        ("content/cards/cold.yml", "{minutes: [10", "{time: [10", "attribute_unknown"),
    ],
)
def test_every_place_of_a_value_is_looked_at(
    file: str, old: str, new: str, check: str, tmp_path: Path
) -> None:
    """Basics, history, findings, screens, options, and a card's usual dose and ladder."""
    assert [one.check for one in changed(tmp_path / "root", file, old, new).found] == [check]
