"""The key of a question of each kind, as policies take it."""

from fractions import Fraction
from typing import Any

import pytest

from builder.grade.scoring.choices import ChoiceKey
from builder.grade.scoring.keyed import Keyed, keyed
from builder.grade.scoring.matching import MatchKey
from builder.grade.scoring.number import NumberKey
from builder.grade.scoring.ordering import OrderKey
from builder.grade.scoring.panel import PanelKey
from builder.grade.scoring.registry import score
from builder.grade.scoring.value import Value
from builder.model.keyed import KeyedParts
from builder.model.policy import POLICY_NAMES
from builder.model.question import QUESTION_KINDS, QuestionKind

XYZ = ("x", "y", "z")
BY_KIND: dict[QuestionKind, tuple[dict[str, Any], Keyed, Value]] = {
    "one": ({"right": ("x",)}, ChoiceKey(XYZ, frozenset("x")), "x"),
    "many": ({"right": ("x", "y")}, ChoiceKey(XYZ, frozenset("xy")), ("x", "y")),
    "order": (
        {"right": ("z", "x", "y"), "must": (("z", "x"),)},
        OrderKey(("z", "x", "y"), (("z", "x"),)),
        ("z", "x", "y"),
    ),
    "match": (
        {"right": (), "partners": ("a", "b", "c", "d"), "pairs": (("x", "a"), ("y", "b"), ("z", "d"))},
        MatchKey(frozenset({("x", "a"), ("y", "b"), ("z", "d")})),
        (("x", "a"), ("y", "b"), ("z", "d")),
    ),
    "number": (
        {"right": (), "within": {"value": 45, "least": "171/4", "most": "189/4", "unit": "minutes"}},
        NumberKey(Fraction(171, 4), Fraction(189, 4), "minutes"),
        "45",
    ),
    "panel": (
        {"right": ("y",), "votes": (("x", 3), ("y", 9), ("z", 0))},
        PanelKey((("x", 3), ("y", 9), ("z", 0))),
        "y",
    ),
}


@pytest.mark.parametrize("kind", BY_KIND)
def test_the_right_answer_earns_everything_under_every_policy(kind: QuestionKind) -> None:
    """The key is what the policies of its kind take, and nothing is lost on the way."""
    parts, key, right = BY_KIND[kind]
    made = keyed(KeyedParts.model_validate({"kind": kind, "options": XYZ, **parts}))
    assert made == key
    assert made is not None
    assert [score(made, policy, right) for policy in POLICY_NAMES[kind]] == [1] * len(POLICY_NAMES[kind])


def test_a_written_answer_has_no_key() -> None:
    """A person marks it; every other kind has one."""
    assert keyed(KeyedParts(kind="text", options=(), right=())) is None
    assert {*BY_KIND, "text"} == set(QUESTION_KINDS)
