"""The test passes on its mark and on every question that must be right."""

from fractions import Fraction

import pytest

from builder.grade.exam import exam_requirements, least_right
from builder.model.records import Attempt, Mark, Requirement


def attempt(right: int, of: int, *, musts: int = 0, safe: bool = True, counts: bool = True) -> Attempt:
    """An attempt with so many right of so many; the first are must-pass, the first of all wrong if unsafe."""
    first = 0 if safe else 1
    marks = tuple(
        Mark(question=f"q{at}", mark=Fraction(first <= at < right + first), given=True, must_pass=at < musts)
        for at in range(of)
    )
    total = Fraction(right, of)
    mark = Fraction(7, 10)
    passed = total >= mark and all(one.mark == 1 for one in marks if one.must_pass)
    return Attempt(
        test="final",
        number=1,
        code="A",
        version="A",
        sheet="d",
        edition="e",
        key_edition="k",
        marks=marks,
        total=total,
        pass_mark=mark,
        counts=counts,
        passed=passed,
    )


def told(*attempts: Attempt) -> list[tuple[str, bool]]:
    """What is required, and whether it is met."""
    return [(one.kind, one.met) for one in requirements(*attempts)]


def requirements(*attempts: Attempt) -> tuple[Requirement, ...]:
    """The requirements of the final test."""
    return exam_requirements(attempts, "final")


def test_a_mark_that_prints_as_enough_may_fail() -> None:
    """32 of 46 is 69.565 % and fails 70 %."""
    (found,) = requirements(attempt(32, 46))
    assert not found.met
    assert found.reason == "Attempt 1, version A: 32 of 46 marks, 69.565 %; 70 % passes."


def test_the_pass_mark_itself_passes() -> None:
    """7 of 10 is 70 % and passes."""
    assert told(attempt(7, 10)) == [("test", True)]


def test_a_must_pass_question_missed_fails_at_95_percent() -> None:
    """The mark is met, the must-pass questions are not, and the one missed is named."""
    found = requirements(attempt(19, 20, musts=3, safe=False))
    assert [(one.kind, one.met) for one in found] == [("test", True), ("must_pass", False)]
    assert "95 %" in found[0].reason
    assert found[1].reason == "2 of 3 questions that must be right are; not right: q0."


def test_half_a_mark_is_no_full_mark() -> None:
    """A must-pass question needs its full mark."""
    made = attempt(10, 10, musts=1)
    half = made.marks[0].model_copy(update={"mark": Fraction(1, 2)})
    assert told(made.model_copy(update={"marks": (half, *made.marks[1:])}))[1] == ("must_pass", False)


def test_what_was_left_open_is_named() -> None:
    """Unanswered questions stand in the reason."""
    made = attempt(9, 10)
    blank = made.marks[-1].model_copy(update={"given": False})
    found = requirements(made.model_copy(update={"marks": (*made.marks[:-1], blank)}))
    assert found[0].reason.endswith("70 % passes; unanswered: q9.")


@pytest.mark.parametrize(
    ("attempts", "words"),
    [((), "No answer sheet"), ((attempt(9, 10, counts=False),), "Only attempt 1 is there, which is beyond")],
)
def test_without_an_attempt_the_reason_says_which(attempts: tuple[Attempt, ...], words: str) -> None:
    """Nothing sat, and only sat too late, are different reasons."""
    (found,) = requirements(*attempts)
    assert not found.met
    assert words in found.reason


def test_the_least_number_right_is_exact() -> None:
    """55 % of 100 is 55, where a floating product rounds up to 56."""
    assert least_right(Fraction(55, 100), 100) == 55


def test_an_answer_that_waits_leaves_the_test_open() -> None:
    """Neither met nor failed, whatever has been earned so far; the reason says what it waits for."""
    made = attempt(9, 10, musts=1)
    waiting = made.model_copy(
        update={
            "marks": (*made.marks[:-1], made.marks[-1].model_copy(update={"waits": True})),
            "passed": False,
        }
    )
    (found,) = requirements(waiting)
    assert (found.met, found.open) == (False, True)
    assert found.reason == (
        "Not decided: 1 written answer waits for a person to mark it; so far 9 of 10 marks in attempt 1, "
        "version A; 70 % passes."
    )
    assert [one.open for one in requirements(waiting, attempt(10, 10, musts=1))] == [False, False]
