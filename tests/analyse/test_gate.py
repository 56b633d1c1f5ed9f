"""Figures are printed from so many sitters on, and the reason stands where they are not."""

from fractions import Fraction

import pytest

from builder.analyse.gate import consistency, difficulty, discrimination

RIGHT, WRONG, HALF = Fraction(1), Fraction(0), Fraction(1, 2)


def table(n: int) -> list[list[int]]:
    """Three questions whose answers vary, by so many sitters."""
    return [[at % 2, int(at % 3 > 0), int(at % 5 > 1)] for at in range(n)]


def test_under_ten_there_are_counts_alone() -> None:
    """Nine sitters give no share, ten give one with its limits."""
    nine = difficulty([RIGHT] * 9)
    assert nine.value is None
    assert nine.note == "Fewer than 10 sat it (9), so the counts alone are given."
    ten = difficulty([RIGHT] * 5 + [WRONG] * 5)
    assert (ten.value, ten.note) == (0.5, "")
    assert (ten.low, ten.high) == pytest.approx((0.2365931, 0.7634069), abs=1e-6)


def test_marks_in_parts_have_a_mean_and_no_limits() -> None:
    """The limits belong to questions that are right or wrong."""
    found = difficulty([HALF] * 4 + [RIGHT] * 6)
    assert (found.value, found.low) == (0.8, None)
    assert "in parts" in found.note


@pytest.mark.parametrize(
    ("n", "shown", "provisional"), [(29, False, False), (30, True, True), (49, True, True), (50, True, False)]
)
def test_relations_begin_at_thirty(n: int, shown: bool, provisional: bool) -> None:  # noqa: FBT001
    """Discrimination and reliability need thirty sitters, and are provisional under fifty."""
    for found in (discrimination(table(n), 0), consistency(table(n))):
        assert (found.value is not None) is shown
        assert found.note.startswith("Provisional") is provisional
        assert shown or "Fewer than 30 sat it (29)" in found.note
        assert not shown or (found.low is not None and found.high is not None and found.low < found.high)


def test_what_does_not_vary_is_not_defined() -> None:
    """Everyone right is no correlation of zero, and no total that varies is no reliability."""
    same = [[1, *row[1:]] for row in table(30)]
    assert discrimination(same, 0).value is None
    assert discrimination(same, 0).note.startswith("Not defined")
    level = [[1, 0]] * 30
    assert consistency(level).note.startswith("Not defined")
