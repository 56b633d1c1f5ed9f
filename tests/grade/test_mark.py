"""One question earns an exact mark."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.grade.mark import mark, marks_of
from builder.grade.scoring.value import Value
from builder.model.answers import Given
from builder.model.handed import sheet_of
from tests.records.made import OPTIONS, code_for, key_answer, marked, ring, sheet_bytes, written_answer

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


@pytest.mark.parametrize(
    ("parts", "value", "earned"),
    [
        ({"kind": "order", "right": OPTIONS, "policy": "pairs"}, ("o2", "o1", "o3", "o4"), Fraction(5, 6)),
        ({"kind": "order", "right": OPTIONS, "policy": "exact"}, ("o2", "o1", "o3", "o4"), Fraction(0)),
        (
            {"kind": "match", "right": (), "pairs": (("o1", "r1"), ("o2", "r2")), "policy": "per_pair"},
            (("o1", "r1"),),
            Fraction(1, 2),
        ),
        (
            {
                "kind": "number",
                "right": (),
                "within": {"value": 7, "least": "7", "most": "15/2", "unit": "cm"},
                "policy": "within",
            },
            "7,5 cm",
            Fraction(1),
        ),
        (
            {
                "kind": "number",
                "right": (),
                "within": {"value": 7, "least": "7", "most": "15/2", "unit": "cm"},
                "policy": "within",
            },
            "7.51",
            Fraction(0),
        ),
        (
            {"kind": "panel", "right": ("o1",), "votes": (("o1", 6), ("o2", 2)), "policy": "aggregate"},
            "o2",
            Fraction(1, 3),
        ),
    ],
)
def test_every_kind_is_marked_by_its_named_policy(
    parts: dict[str, object], value: Value, earned: Fraction
) -> None:
    """In exact fractions, also where an answer is right in part."""
    answer = key_answer("q", **parts)
    assert mark(answer, Given(q="q", kind=answer.kind, value=value)).mark == earned
    assert mark(answer, None).mark == 0


def test_a_written_answer_waits_until_a_person_has_marked_all_of_it() -> None:
    """It earns nothing yet, and says so; then its points by the rubric."""
    answer, given = written_answer("q"), Given(q="q", kind="text", value="Not today.")
    assert (int(mark(answer, given).mark), mark(answer, given).waits) == (0, True)
    assert mark(answer, given, marked("A", "Not today.", stops=2)).waits
    made = mark(answer, given, marked("A", "Not today.", stops=1, plain=1))
    assert (made.mark, made.waits) == (Fraction(3, 5), False)


def test_a_mark_holds_for_the_text_that_was_marked() -> None:
    """Where a participant has handed in another text since, it waits again."""
    given = Given(q="q", kind="text", value="I refer her today.")
    assert mark(written_answer("q"), given, marked("A", "Not today.", stops=2, plain=1)).waits


def test_an_answer_that_was_not_written_waits_for_nobody() -> None:
    """What was left open earns nothing, and a person need not look at it."""
    made = mark(written_answer("q"), Given(q="q", kind="text", value=None))
    assert (int(made.mark), made.waits, made.given) == (0, False, False)


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
