"""One question earns an exact mark."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.grade.mark import mark, marks_of
from builder.model.answers import Given
from builder.model.handed import sheet_of
from tests.records.made import OPTIONS, code_for, key_answer, ring, sheet_bytes

ONE = key_answer("q")
MANY = key_answer("q", kind="many", right=("o1", "o3"))
EXACT = key_answer("q", kind="many", right=("o1", "o3"), policy="exact")
NONE_RIGHT = key_answer("q", kind="many", right=())


def many(*chosen: str) -> Given:
    """An answer of several choices."""
    return Given(q="q", kind="many", value=chosen)


@pytest.mark.parametrize(("value", "earned"), [("o1", 1), ("o2", 0), ("", 0), ("o1 ", 0), (None, 0)])
def test_one_is_right_or_not(value: str | None, earned: int) -> None:
    """A question with one answer earns all or nothing."""
    assert mark(ONE, Given(q="q", kind="one", value=value)).mark == earned


@pytest.mark.parametrize(
    ("chosen", "plus_minus", "exact"),
    [
        (("o1", "o3"), Fraction(1), 1),
        (("o1",), Fraction(1, 2), 0),
        (("o1", "o2"), Fraction(0), 0),
        (("o1", "o2", "o3"), Fraction(1, 2), 0),
        (OPTIONS, Fraction(0), 0),
        (("o1", "o1"), Fraction(1, 2), 0),
        (("o1", "o3", "made up"), Fraction(1, 2), 0),
        ((), Fraction(0), 0),
    ],
)
def test_many_follow_the_policy(chosen: tuple[str, ...], plus_minus: Fraction, exact: int) -> None:
    """Wrong choices take away under one policy, and undo everything under the other."""
    assert mark(MANY, many(*chosen)).mark == plus_minus
    assert mark(EXACT, many(*chosen)).mark == exact


def test_where_nothing_is_right_choosing_nothing_is() -> None:
    """A question without a right option is right when answered with none, and not when left open."""
    assert mark(NONE_RIGHT, many()).mark == 1
    assert mark(NONE_RIGHT, many("o1")).mark == 0
    assert mark(NONE_RIGHT, None).mark == 0


def test_every_question_of_the_key_is_marked_in_its_order() -> None:
    """What a sheet leaves out is there, not given and without a mark."""
    sheet = sheet_of(sheet_bytes(code_for(1), {"a3": "o1", "a2": None}))
    marks = marks_of(sheet, ring(questions=3).keys[0])
    assert [(one.question, int(one.mark), one.given) for one in marks] == [
        ("a1", 0, False),
        ("a2", 0, False),
        ("a3", 1, True),
    ]


subsets = st.sets(st.sampled_from(OPTIONS))


@given(subsets.filter(bool), subsets, st.sampled_from(["exact", "plus_minus"]))
def test_a_mark_lies_between_nothing_and_all(right: set[str], chosen: set[str], policy: str) -> None:
    """Full marks are for exactly the right choices; nothing goes below none."""
    answer = key_answer("q", kind="many", right=tuple(right), policy=policy)
    earned = mark(answer, many(*chosen)).mark
    assert 0 <= earned <= 1
    assert (earned == 1) == (chosen == right)


@given(subsets.filter(bool), subsets, st.sampled_from(OPTIONS), st.sampled_from(["exact", "plus_minus"]))
def test_one_choice_more_of_what_is_wrong_never_helps(
    right: set[str], chosen: set[str], more: str, policy: str
) -> None:
    """Adding a wrong choice, or taking back a right one, never raises a mark."""
    answer = key_answer("q", kind="many", right=tuple(right), policy=policy)
    worse = chosen - {more} if more in right else chosen | {more}
    assert mark(answer, many(*worse)).mark <= mark(answer, many(*chosen)).mark
