"""The solver's door: clauses in, a solution or none out."""

import pytest

from builder.doors.solver import Solver


def test_a_solution_meets_every_clause() -> None:
    """One of two, not the first, so the second."""
    with Solver() as solver:
        solver.add([[1, 2], [-1]])
        assert solver.model([]) == frozenset({2})


def test_assumptions_hold_for_one_question_only() -> None:
    """What is assumed once is forgotten afterwards."""
    with Solver() as solver:
        solver.add([[1, 2]])
        assert solver.model([-1, -2]) is None
        assert solver.model([-1]) == frozenset({2})
        assert not solver.can_be([-1, -2])
        assert solver.can_be([-1])


def test_clauses_may_follow_a_question() -> None:
    """A solver that has answered still takes clauses."""
    with Solver() as solver:
        solver.add([[1]])
        assert solver.model([]) == frozenset({1})
        solver.add([[-1, 2], [-2]])
        assert solver.model([]) is None


def test_a_fresh_variable_was_never_given_before() -> None:
    """Whoever asks, each gets another."""
    with Solver() as solver:
        assert len({solver.fresh() for _ in range(5)}) == 5


@pytest.mark.parametrize("true", range(5))
def test_a_counter_knows_how_many_are_true(true: int) -> None:
    """As many as are allowed may be true, and not one more."""
    with Solver() as solver:
        literals = [solver.fresh() for _ in range(4)]
        beyond = solver.counted(literals, 4)
        assumed = [one if at < true else -one for at, one in enumerate(literals)]
        assert [solver.can_be([*assumed, -more]) for more in beyond] == [true <= k for k in range(4)]
