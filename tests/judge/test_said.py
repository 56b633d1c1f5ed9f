"""What bears on an option, counted together: the worst wins, and the worst is told first."""

import pytest

from builder.judge.said import Said, Tally
from builder.model.judgement import Fired


def said(name: str, sure: int, worst: int, *changes: str) -> Said:
    """What one rule says."""
    truth = "fires" if sure == worst else "open"
    return Said(sure, worst, Fired(name, name, truth, "", "", "review", (), None, True), changes)


@pytest.mark.parametrize(
    ("all_said", "sure", "worst"),
    [
        ([], 0, 0),
        ([(1, 1), (3, 3)], 3, 3),
        ([(3, 3), (1, 1)], 3, 3),
        ([(0, 3), (1, 1)], 1, 3),
        ([(0, 2), (0, 1)], 0, 2),
    ],
)
def test_the_worst_wins(all_said: list[tuple[int, int]], sure: int, worst: int) -> None:
    """In whatever order; what is sure and what may be are counted apart."""
    tally = Tally()
    for one in all_said:
        tally.take(said("one", *one), one[0])
    assert (tally.sure, tally.worst) == (sure, worst)


def test_what_is_sure_may_be_less_than_one_says() -> None:
    """Of several cells that may hold, the mildest is sure."""
    tally = Tally()
    tally.take(said("cell", 3, 3), 1)
    assert (tally.sure, tally.worst) == (1, 3)


def test_what_fires_is_told_first_and_of_that_the_worst() -> None:
    """What is alike stays in its order."""
    tally = Tally()
    for name, sure, worst in [("a", 0, 3), ("b", 1, 1), ("c", 3, 3), ("d", 1, 1), ("e", 0, 1)]:
        tally.take(said(name, sure, worst), sure)
    assert [one.id for one in tally.reasons()] == ["c", "b", "d", "a", "e"]


def test_a_change_is_told_once() -> None:
    """However many ask for it; nothing where none does."""
    tally = Tally()
    tally.take(said("a", 0, 0), 0)
    assert tally.change() is None
    tally.take(said("b", 1, 1, "cloth between", "at most 20 min"), 1)
    tally.take(said("c", 1, 1, "at most 20 min"), 1)
    assert tally.change() == "cloth between; at most 20 min"
