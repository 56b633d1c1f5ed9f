"""Faults of a condition, part by part."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.model.condition import parse
from builder.model.fact import Fact
from builder.read.refer.condition import Scope, atom_faults, condition_faults

SCOPE = Scope(
    {
        "fever": Fact(kind="yes_no", label="Fever", group="red_flag", worse_when="yes"),
        "heat": Fact(
            kind="scale", label="Warmth", group="sign", worse_when="higher", values=("none", "clear")
        ),
        "bend": Fact(kind="number", label="Bend", group="measure", worse_when="lower", high=Decimal(160)),
        "region": Fact(
            kind="one_of", label="Region", group="measure", worse_when="both", values=("thigh", "calf")
        ),
        "odd": None,
    },
    {"phase": "The phase is not known yet."},
)


def told(condition: object) -> list[tuple[str, tuple[str | int, ...], bool]]:
    """Check, path and whether the key is meant, of every fault."""
    return [(one.told.check, one.path, one.key) for one in condition_faults(condition, (), SCOPE)]


@pytest.mark.parametrize(
    "condition",
    [
        {"fever": "yes"},
        {"heat": ["none", "clear"], "bend": {"over": 10, "at_most": 160}},
        {"heat": {"at_least": "clear"}},
        {"all": [{"fever": "no"}, {"any": [{"not": {"heat": "none"}}, {"recorded": "bend"}]}]},
        {"odd": ["anything", 3], "region": "calf"},
        {"odd": {"over": 3}},
    ],
)
def test_what_holds_is_quiet(condition: object) -> None:
    """Values, lists, ranges, and every joining word."""
    assert told(condition) == []
    parse(condition)


@pytest.mark.parametrize(
    ("condition", "fault"),
    [
        ("fever", ("condition_malformed", (), False)),
        ({}, ("condition_malformed", (), False)),
        (None, ("condition_malformed", (), False)),
        ({"all": {"fever": "yes"}}, ("condition_malformed", ("all",), False)),
        ({"any": []}, ("condition_malformed", ("any",), False)),
        ({"any": ["fever"]}, ("condition_malformed", ("any", 0), False)),
        ({"not": []}, ("condition_malformed", ("not",), False)),
        ({"recorded": "fevr"}, ("fact_unknown", ("recorded",), False)),
        ({"recorded": ["fever"]}, ("fact_unknown", ("recorded",), False)),
        ({"fevr": "yes"}, ("fact_unknown", ("fevr",), True)),
        ({"phase": "acute"}, ("condition_out_of_reach", ("phase",), True)),
        ({"fever": True}, ("fact_value", ("fever",), False)),
        ({"heat": ["clear", "hot"]}, ("fact_value", ("heat", 1), False)),
        ({"heat": [["clear"]]}, ("condition_malformed", ("heat", 0), False)),
        ({"heat": None}, ("condition_malformed", ("heat",), False)),
        ({"bend": {}}, ("condition_malformed", ("bend",), False)),
        ({"bend": {"over": 161}}, ("fact_out_of_range", ("bend", "over"), False)),
        ({"bend": {"over": [1]}}, ("condition_malformed", ("bend", "over"), False)),
        ({"bend": {"ovr": 1}}, ("condition_malformed", ("bend", "ovr"), True)),
        ({"region": {"at_least": "calf"}}, ("condition_no_order", ("region",), False)),
        ({"fever": {"at_least": "no"}}, ("condition_no_order", ("fever",), False)),
    ],
)
def test_what_does_not_is_placed(condition: object, fault: tuple[str, tuple[str | int, ...], bool]) -> None:
    """The innermost part that is wrong is named, and nothing around it."""
    assert told(condition) == [fault]


def test_limits_speak_of_attributes() -> None:
    """The names in limits are attributes, and are called so."""
    (fault,) = atom_faults("time", 3, ("limits", "time"), Scope({}, what="attribute"))
    assert fault.told[:2] == ("attribute_unknown", "There is no attribute `time`.")


NAMES = st.sampled_from(["all", "any", "not", "recorded", "fever", "bend", "odd", "over", "at_most"])
WILD = st.recursive(
    st.sampled_from(["yes", "fever", 3, True, None, Decimal("0.5")]),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(NAMES, inner, max_size=3),
    max_leaves=8,
)


@given(WILD)
def test_what_the_noun_refuses_is_always_placed(condition: object) -> None:
    """Whatever cannot be parsed as a condition has at least one placed fault here."""
    try:
        parse(condition)
    except ValueError:
        assert told(condition) != []
