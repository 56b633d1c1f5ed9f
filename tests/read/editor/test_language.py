"""The language of conditions, in the short forms in which authors write it."""

from decimal import Decimal

import pytest
from jsonschema import Draft7Validator

from builder.doors.schema import Schema
from builder.model.fact import Fact
from builder.read.editor.language import condition_of, limits_of, recorded_of, said_of

FACTS: dict[str, Fact | None] = {
    "fever": Fact(kind="yes_no", label="Fever", group="red_flag", worse_when="yes", question="Any fever?"),
    "heat": Fact(kind="scale", label="Heat", group="sign", worse_when="higher", values=("none", "clear")),
    "bend": Fact(
        kind="number", label="Bend", group="measure", worse_when="lower", unit="°", low=Decimal(0),
        high=Decimal(160),
    ),
    "odd": None,
}  # fmt: skip


def holds(schema: Schema, value: object) -> bool:
    """Whether a schema that stands at `#/$defs/c` accepts a value."""
    whole = {"$ref": "#/$defs/c", "$defs": {"c": schema}}
    return bool(Draft7Validator(whole).is_valid(value))


@pytest.mark.parametrize(
    ("condition", "expected"),
    [
        ({"fever": "yes"}, True),
        ({"fever": "yes", "heat": "clear"}, True),
        ({"heat": ["none", "clear"]}, True),
        ({"heat": {"at_least": "clear"}}, True),
        ({"bend": {"over": 90, "at_most": 120.5}}, True),
        ({"all": [{"fever": "yes"}, {"any": [{"not": {"bend": 0}}, {"recorded": "heat"}]}]}, True),
        ({"odd": {"over": 3}}, True),
        ({}, False),
        ("fever", False),
        ({"fever": True}, False),
        ({"fever": {"at_least": "no"}}, False),
        ({"heat": []}, False),
        ({"bend": {}}, False),
        ({"bend": 161}, False),
        ({"bend": "90"}, False),
        ({"not": [{"fever": "yes"}]}, False),
        ({"recorded": ["fever"]}, False),
        ({"any": [{"fver": "yes"}]}, False),
    ],
)
def test_a_condition_is_taken_as_written(condition: object, *, expected: bool) -> None:
    """Values, lists, ranges, and all, any, not, recorded, however deep."""
    assert holds(condition_of(FACTS, "#/$defs/c"), condition) == expected


def test_what_is_only_taught_may_ask_for_any_name() -> None:
    """Its shape is still held."""
    free = condition_of(None, "#/$defs/c")
    assert holds(free, {"length_cm": {"over": 15}})
    assert not holds(free, {"length_cm": {"above": 15}})


def test_a_record_has_one_value_a_fact() -> None:
    """A list or a range is for conditions and limits alone."""
    assert holds(recorded_of(FACTS), {"bend": 90, "fever": "no"})
    assert not holds(recorded_of(FACTS), {"bend": {"over": 90}})
    assert holds(limits_of(FACTS), {"bend": {"over": 90}})


def test_an_editor_shows_label_question_and_unit() -> None:
    """What stands at a fact when it is pointed at."""
    assert said_of(FACTS["fever"]) == {"title": "Fever", "description": "Any fever?"}
    assert said_of(FACTS["bend"]) == {"title": "Bend", "description": "(°)"}
