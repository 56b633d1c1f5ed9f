"""The language of conditions: what is understood, what is refused, and that it reads back as itself."""

import json
import math
import re
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from builder.model.condition import (
    BOUNDS,
    AllOf,
    Among,
    AnyOf,
    Condition,
    Limits,
    Node,
    Not,
    Recorded,
    Within,
    atoms,
    parse,
    parse_limits,
    polar_atoms,
    unparse,
    unparse_limits,
)

WORDS = st.sampled_from(["yes", "no", "rising", "none", "all", "7", "über"])
NAMES = st.sampled_from(["fever", "written.minutes", "knee_flexion", "alles", "nots"])
NUMBERS = st.decimals(allow_nan=False, allow_infinity=False, min_value=-(10**9), max_value=10**9, places=4)
VALUES = st.one_of(WORDS, NUMBERS, st.integers(-(10**9), 10**9).map(Decimal))
AMONG = st.builds(Among, NAMES, st.lists(VALUES, min_size=1, max_size=3).map(tuple))
BOUNDED = st.dictionaries(st.sampled_from(BOUNDS), VALUES, min_size=1).map(lambda found: tuple(found.items()))
LEAVES: st.SearchStrategy[Node] = st.one_of(
    AMONG, st.builds(Within, NAMES, BOUNDED), st.builds(Recorded, NAMES)
)


def branches(below: st.SearchStrategy[Node]) -> st.SearchStrategy[Node]:
    """Conditions made of smaller ones."""
    parts = st.lists(below, min_size=1, max_size=3).map(tuple)
    return st.one_of(st.builds(AllOf, parts), st.builds(AnyOf, parts), st.builds(Not, below))


NODES = st.recursive(LEAVES, branches, max_leaves=8)


@given(NODES)
def test_a_condition_reads_back_as_itself(node: Node) -> None:
    """What is written out is read as the same condition, also by way of JSON."""
    assert parse(unparse(node)) == node
    assert parse(json.loads(json.dumps(unparse(node)))) == node
    assert parse(node) is node


@given(NODES)
def test_a_condition_has_the_same_leaves_with_and_without_signs(node: Node) -> None:
    """Signs are added to the leaves and change nothing else; one more `not` turns each of them."""
    assert [leaf for leaf, _ in polar_atoms(node)] == list(atoms(node))
    turned = [(leaf, not positive) for leaf, positive in polar_atoms(node)]
    assert list(polar_atoms(Not(node))) == turned


@pytest.mark.parametrize(
    ("written", "node"),
    [
        ({"fever": "yes"}, Among("fever", ("yes",))),
        ({"injury": ["strain", "sprain"]}, Among("injury", ("strain", "sprain"))),
        ({"age": 14}, Among("age", (Decimal(14),))),
        ({"age": [Decimal("14.5"), 15]}, Among("age", (Decimal("14.5"), Decimal(15)))),
        (
            {"age": {"at_least": 2, "below": 14}},
            Within("age", (("at_least", Decimal(2)), ("below", Decimal(14)))),
        ),
        ({"swelling": {"over": "falling"}}, Within("swelling", (("over", "falling"),))),
        ({"recorded": "clearance"}, Recorded("clearance")),
        ({"not": {"fever": "no"}}, Not(Among("fever", ("no",)))),
        ({"a": "x", "b": "y"}, AllOf((Among("a", ("x",)), Among("b", ("y",))))),
        ({"not": {"a": "x", "b": "y"}}, Not(AllOf((Among("a", ("x",)), Among("b", ("y",)))))),
        ({"all": [{"a": "x"}]}, AllOf((Among("a", ("x",)),))),
        ({"any": [{"a": "x"}, {"recorded": "b"}]}, AnyOf((Among("a", ("x",)), Recorded("b")))),
    ],
)
def test_every_form_is_understood(written: dict[str, Any], node: Node) -> None:
    """Values, lists, ranges, several keys, `all`, `any`, `not` and `recorded` mean what they say."""
    assert parse(written) == node


FORM = "write a condition as `fact: value`, or `all:`, `any:`, `not:`, `recorded:`"
VALUE = "`fever` needs a word or a number; for yes or no write `yes` or `no`"
RANGE = "`age` takes the bounds over, at_least, below, at_most"


@pytest.mark.parametrize(
    ("written", "message"),
    [
        (None, FORM),
        ("fever", FORM),
        (5, FORM),
        ([], FORM),
        ({}, FORM),
        ({"not": "fever"}, FORM),
        ({"all": ["fever"]}, FORM),
        ({"any": [{"fever": "yes"}, {}]}, FORM),
        ({"all": []}, "`all` needs a list of conditions"),
        ({"any": {"fever": "yes"}}, "`any` needs a list of conditions"),
        ({"recorded": ["fever"]}, "`recorded` takes the name of one fact"),
        ({"recorded": True}, "`recorded` takes the name of one fact"),
        ({"fever": []}, "`fever` needs at least one value"),
        ({"fever": True}, VALUE),
        ({"fever": None}, VALUE),
        ({"fever": ["yes", False]}, VALUE),
        ({"fever": [["yes"]]}, VALUE),
        ({"fever": [{"over": 1}]}, VALUE),
        ({"fever": date(2026, 11, 1)}, VALUE),
        ({"fever": math.nan}, VALUE),
        ({"fever": Decimal("-Infinity")}, VALUE),
        ({"fever": {"over": True}}, VALUE),
        ({"fever": {"over": [1]}}, VALUE),
        ({"age": {}}, RANGE),
        ({"age": {"above": 5}}, RANGE),
        ({"age": {"over": 5, "up_to": 9}}, RANGE),
    ],
)
def test_every_wrong_form_is_refused_in_words(written: object, message: str) -> None:
    """What is not part of the language is refused, and the message says what to write."""
    with pytest.raises(ValueError, match=f"^{re.escape(message)}$"):
        parse(written)


@pytest.mark.parametrize("written", [{"fever": date(2026, 11, 1)}, {"recorded": 5}, "fever"])
def test_a_refusal_reaches_the_author_through_the_noun(written: object) -> None:
    """Inside a noun a wrong form is a fault of the file, never one of the machine."""
    with pytest.raises(ValidationError):
        TypeAdapter(Condition).validate_python(written)


LIMITS = {"minutes": {"at_most": 20}, "barrier": "yes", "site": ["on", "adjacent"]}
LIMITS_READ: dict[str, Node] = {
    "minutes": Within("written.minutes", (("at_most", Decimal(20)),)),
    "barrier": Among("written.barrier", ("yes",)),
    "site": Among("written.site", ("on", "adjacent")),
}


def test_limits_are_conditions_on_what_is_written() -> None:
    """Each attribute becomes a condition on the option's own attribute, and reads back."""
    assert parse_limits(LIMITS) == LIMITS_READ
    assert parse_limits(parse_limits(LIMITS)) == LIMITS_READ
    assert parse_limits(unparse_limits(LIMITS_READ)) == LIMITS_READ


LIMIT_NAMES = st.sampled_from(["minutes", "all", "not", "recorded"])


@given(
    st.dictionaries(
        LIMIT_NAMES, st.one_of(VALUES, st.dictionaries(st.sampled_from(BOUNDS), VALUES, min_size=1))
    )
)
def test_limits_read_back_as_themselves(written: dict[str, object]) -> None:
    """Whatever an attribute is called, its limit is a limit on it and nothing else."""
    limits = TypeAdapter(Limits).validate_python(written)
    assert parse_limits(unparse_limits(limits)) == limits
    assert [leaf.name for node in limits.values() for leaf in atoms(node)] == [
        f"written.{one}" for one in written
    ]


@pytest.mark.parametrize(
    "written", [{"minutes": True}, {"minutes": {"up_to": 3}}, {"minutes": []}, "minutes", ["a"]]
)
def test_wrong_limits_are_refused(written: object) -> None:
    """A limit that is none is refused as a fault of the file."""
    with pytest.raises(ValidationError):
        TypeAdapter(Limits).validate_python(written)


def test_conditions_and_limits_are_written_out_plain() -> None:
    """As data, they are the plain mappings an author could have written."""
    node = parse({"any": [{"age": {"over": Decimal("14.5")}}, {"fever": "yes"}]})
    assert TypeAdapter(Condition).dump_python(node) == {"any": [{"age": {"over": 14.5}}, {"fever": ["yes"]}]}
    limits = TypeAdapter(Limits).validate_python({"minutes": {"at_most": 20}})
    assert TypeAdapter(Limits).dump_json(limits) == b'{"minutes":{"at_most":20}}'
