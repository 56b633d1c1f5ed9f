"""The key of an author-written question, of each kind."""

from fractions import Fraction

import pytest

from builder.grade.scoring.choices import ChoiceKey
from builder.grade.scoring.keyed import Keyed, keyed
from builder.grade.scoring.matching import MatchKey
from builder.grade.scoring.number import NumberKey
from builder.grade.scoring.ordering import OrderKey
from builder.grade.scoring.panel import PanelKey
from builder.grade.scoring.registry import POLICIES, score
from builder.grade.scoring.value import Value
from builder.model.question import AuthorQuestion, QuestionKind
from tests.model.question_blocks import BLOCKS, QUESTION

CASES: list[tuple[QuestionKind, str, str, Keyed | None, Value]] = [
    ("one", "xy", "", ChoiceKey(("x", "y"), frozenset("x")), "x"),
    ("many", "xyz", "", ChoiceKey(("x", "y", "z"), frozenset("xy")), ("x", "y")),
    ("order", "xyz", "", OrderKey(("x", "y", "z"), (("x", "y"), ("y", "z"))), ("x", "y", "z")),
    ("match", "xy", "abc", MatchKey(frozenset({("x", "a"), ("y", "b")})), (("x", "a"), ("y", "b"))),
    ("number", "", "", NumberKey(Fraction(15), Fraction(25), "minutes"), "20"),
    ("panel", "xy", "", PanelKey((("x", 3), ("y", 9))), "y"),
    ("text", "", "", None, ""),
]


@pytest.mark.parametrize(("kind", "names", "partners", "key", "right"), CASES, ids=[row[0] for row in CASES])
def test_the_key_holds_what_the_author_wrote(
    kind: QuestionKind, names: str, partners: str, key: Keyed | None, right: Value
) -> None:
    """It goes by the names of the sheet, and its right answer earns everything under every policy."""
    question = AuthorQuestion.model_validate({**QUESTION, kind: BLOCKS[kind]})
    made = keyed(question, names, partners)
    assert made == key
    if made:
        assert [score(made, policy, right) for policy in POLICIES[kind]] == [1] * len(POLICIES[kind])


def test_a_share_is_a_share_of_the_number() -> None:
    """45 within 5 % is 42.75 to 47.25."""
    block = {"value": 45, "unit": "minutes", "within_share": "5 %", "because": "So it is taught."}
    key = keyed(AuthorQuestion.model_validate({**QUESTION, "number": block}), ())
    assert key == NumberKey(Fraction(171, 4), Fraction(189, 4), "minutes")


@pytest.mark.parametrize("kind", ["one", "many", "order", "match", "panel"])
def test_names_that_are_too_few_are_refused(kind: str) -> None:
    """No option, step or pair is left without a name."""
    question = AuthorQuestion.model_validate({**QUESTION, kind: BLOCKS[kind]})
    with pytest.raises(ValueError, match="zip"):
        keyed(question, "x", "ab")
